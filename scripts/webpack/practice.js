/** The practice sheet in dist/practice: a page that any web server can serve as it is. */
const { readFileSync } = require("node:fs");
const { join } = require("node:path");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");
const { NormalModuleReplacementPlugin, sources } = require("webpack");
const { typescriptRule } = require("./typescript.js");

const ROOT = join(__dirname, "../..");

/** Hyphenation in eighty languages, which no cell uses. */
const HYPHENATION = /engine-render[\\/]lib[\\/]es$/;

module.exports = () => ({
  name: "practice",
  context: ROOT,
  entry: {
    practice: ["@univerjs/preset-sheets-core/lib/index.css", "./src/practice/page.css", "./src/practice/main.ts"],
  },
  output: {
    path: join(ROOT, "dist/practice"),
    filename: "[name].js",
    chunkFilename: "[name].[contenthash:8].js",
    clean: true,
  },
  target: ["web", "es2022"],
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [typescriptRule, { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] }],
  },
  // The grid is 6 MB of script: this minimizer takes seconds where the usual one takes minutes.
  optimization: { minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.swcMinify, extractComments: false })] },
  performance: { hints: false },
  plugins: [
    new NormalModuleReplacementPlugin(/^\.\/(?!index|facade)[\w-]+\.js$/, (found) => {
      if (HYPHENATION.test(found.context)) found.request = "data:text/javascript,export {}";
    }),
    new MiniCssExtractPlugin({ filename: "[name].css" }),
    { apply: emitPage },
  ],
});

function emitPage(compiler) {
  compiler.hooks.thisCompilation.tap("emitPage", (compilation) => {
    const stage = compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
    compilation.hooks.processAssets.tap({ name: "emitPage", stage }, () => {
      const emit = (name, file) => compilation.emitAsset(name, new sources.RawSource(readFileSync(join(ROOT, file))));
      emit("index.html", "src/practice/page.html");
      emit("icon.svg", "manifest/icons/icon.svg");
    });
  });
}
