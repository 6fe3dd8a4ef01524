/**
 * The add-in bundle in dist/addin: the functions, the pane page, the manifests and the icons, ready to be served over https.
 * `npm run build` makes it for development; `npm run build -- --env store` makes the one that a store accepts.
 */
const { readdirSync, readFileSync } = require("node:fs");
const { join } = require("node:path");
const { zipSync } = require("fflate");
const MinimizerPlugin = require("minimizer-webpack-plugin");
const { require: requireTypeScript } = require("tsx/cjs/api");
const addresses = require("./addresses.js");
const { catalogueText, emitFiles } = require("./emit.js");
const { shortened } = require("./shortened.js");
const { typescriptRule } = require("./typescript.js");

const ROOT = join(__dirname, "../..");
const OFFICE = join(ROOT, "node_modules/@microsoft/office-js/dist");

/** What office.js loads for the spreadsheet on each platform, in English. */
const OFFICE_FILES =
  /^(office|o15apptofilemappingtable|custom-functions-runtime|excel-(web-16\.00|mac-16\.00|win32-16\.01)(-core)?)\.js$/;

/** The script of the functions tells no working, only the pane does: its modules are kept apart in a layer of this name. */
const FUNCTIONS = "functions";

const silentWorking = {
  issuerLayer: FUNCTIONS,
  resolve: { alias: { [join(ROOT, "src/math/working")]: join(ROOT, "src/math/silent") } },
};

/** Any fixed date: the same sources give the same archive. */
const ARCHIVE_DATE = new Date("2020-01-01T12:00:00");

module.exports = (env = {}) => ({
  name: "addin",
  context: ROOT,
  entry: { functions: { import: "./functions/register.ts", layer: FUNCTIONS }, pane: "./src/pane/main.ts" },
  output: { path: join(ROOT, "dist/addin"), filename: "[name].js", clean: true },
  target: ["web", "es2022"],
  resolve: { extensions: [".ts", ".js"] },
  module: { rules: [typescriptRule, silentWorking] },
  // This minimizer makes the functions a tenth smaller than the usual one. Only they stand alone in one script, so only there
  // can properties have other names.
  optimization: {
    minimizer: [
      minimizer({ include: "functions.js" }, { props: { regex: shortened } }),
      minimizer({ exclude: "functions.js" }, true),
    ],
  },
  performance: { hints: false },
  stats: "minimal",
  plugins: [emitFiles(() => addinFiles(Boolean(env.store)))],
});

function minimizer(files, mangle) {
  return new MinimizerPlugin({
    ...files,
    minify: MinimizerPlugin.swcMinify,
    minimizerOptions: { ecma: 2022, compress: { passes: 3, unsafe_arrows: true }, mangle },
    extractComments: false,
  });
}

/** Every file of the bundle that is not a script: its path in dist/addin, and its content. */
function addinFiles(forStore) {
  const address = addresses.publicAddress();
  const { panePage } = requireTypeScript("../../src/pane/page.ts", __filename);
  const officeScript = forStore ? addresses.OFFICE_FROM_VENDOR : addresses.OFFICE_LOCAL;
  const manifest = (file) => addresses.rewriteManifest(readFileSync(join(ROOT, "manifest", file), "utf8"), address);
  const files = {
    "pane.html": panePage(officeScript),
    "catalogue.json": catalogueText(),
    "pane.css": readFileSync(join(ROOT, "src/pane/pane.css")),
    "about.html": readFileSync(join(ROOT, "src/pane/about.html")),
    "functions.json": readFileSync(join(ROOT, "manifest/functions.json")),
    "manifest.xml": manifest("manifest.xml"),
    "manifest.json": manifest("manifest.json"),
  };
  for (const icon of readdirSync(join(ROOT, "manifest/icons")).filter((file) => file.endsWith(".png"))) {
    files[`icons/${icon}`] = readFileSync(join(ROOT, "manifest/icons", icon));
  }
  files["unified.zip"] = unifiedArchive(files);
  return forStore ? files : { ...files, ...officeFiles() };
}

/** The unified manifest is handed over as an archive of the manifest and its two icons. */
function unifiedArchive(files) {
  const names = ["manifest.json", "icons/color.png", "icons/outline.png"];
  const content = Object.fromEntries(names.map((name) => [name, Buffer.from(files[name])]));
  return Buffer.from(zipSync(content, { mtime: ARCHIVE_DATE }));
}

function officeFiles() {
  const names = [
    ...readdirSync(OFFICE).filter((file) => OFFICE_FILES.test(file)),
    "en-us/office_strings.js",
    "telemetry/oteljs.js",
    "telemetry/oteljs_agave.js",
  ];
  return Object.fromEntries(names.map((name) => [`office/${name}`, readFileSync(join(OFFICE, name))]));
}
