/** What `npm run build` makes: the add-in in dist/addin and the practice sheet in dist/practice. */
const { existsSync } = require("node:fs");
const { join } = require("node:path");

module.exports = (env) =>
  ["addin", "practice"]
    .map((name) => join(__dirname, "scripts/webpack", `${name}.js`))
    .filter((file) => existsSync(file))
    .map((file) => require(file)(env));
