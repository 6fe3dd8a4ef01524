/** How the bundles take in TypeScript: `npm test` checks the types, the bundles only drop them. */
exports.typescriptRule = {
  test: /\.ts$/,
  loader: "ts-loader",
  options: { transpileOnly: true, compilerOptions: { noEmit: false } },
};
