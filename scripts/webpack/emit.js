/** Files of a bundle that no script imports. */
const { require: requireTypeScript } = require("tsx/cjs/api");
const { sources } = require("webpack");

/**
 * A webpack plugin that adds files to the bundle.
 * @param {() => Record<string, string | Buffer>} filesOf their contents by their paths
 */
exports.emitFiles = (filesOf) => ({
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("emitFiles", (compilation) => {
      const stage = compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "emitFiles", stage }, () => {
        for (const [name, content] of Object.entries(filesOf())) {
          // Said to be minimized already, so that the vendor's files stay as they are.
          compilation.emitAsset(name, new sources.RawSource(content), { minimized: true });
        }
      });
    });
  },
});

/** What the pane tells about the functions, for catalogue.json. */
exports.catalogueText = () => {
  const { catalogue } = requireTypeScript("../catalogue.ts", __filename);
  return JSON.stringify(catalogue());
};
