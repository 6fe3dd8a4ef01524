/** The practice sheet in dist/practice: a page that any web server can serve as it is. */
const { readFileSync } = require("node:fs");
const { join } = require("node:path");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const MinimizerPlugin = require("minimizer-webpack-plugin");
const { NormalModuleReplacementPlugin } = require("webpack");
const { catalogueText, emitFiles } = require("./emit.js");
const { typescriptRule } = require("./typescript.js");

const ROOT = join(__dirname, "../..");

/** Hyphenation in eighty languages, which no cell uses. */
const HYPHENATION = /engine-render[\\/]lib[\\/]es$/;

module.exports = () => ({
  name: "practice",
  context: ROOT,
  entry: {
    practice: [
      "@univerjs/preset-sheets-core/lib/index.css",
      "./src/pane/pane.css",
      "./src/practice/page.css",
      "./src/practice/main.ts",
    ],
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
    emitFiles(pageFiles),
  ],
});

/** Every file of the page that is no script or style: its path in dist/practice, and its content. */
function pageFiles() {
  return {
    "index.html": readFileSync(join(ROOT, "src/practice/page.html")),
    "icon.svg": readFileSync(join(ROOT, "manifest/icons/icon.svg")),
    "catalogue.json": catalogueText(),
  };
}
