/** What `npm run build` makes: the add-in in dist/addin and the practice sheet in dist/practice. */
const bundles = [require("./scripts/webpack/addin.js"), require("./scripts/webpack/practice.js")];

module.exports = (env) => bundles.map((make) => make(env));
