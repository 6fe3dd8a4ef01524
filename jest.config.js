/** Packages of the practice sheet's engine that are published as modules only, which jest cannot take as they are. */
const MODULES = [
  "cjk-regex",
  "collapse-white-space",
  "franc-min",
  "kdbush",
  "lodash-es",
  "n-gram",
  "nanoid",
  "quickselect",
  "rbush",
  "regexp-util",
  "trigram-utils",
  "unicode-regex",
].join("|");

/** Tests run straight from TypeScript; types are checked by `tsc` in the same `npm test`. */
module.exports = {
  testMatch: ["<rootDir>/tests/**/*.test.ts"],
  transform: {
    "^.+\\.tsx?$": ["@swc/jest", { jsc: { target: "es2022", parser: { syntax: "typescript" } } }],
    [`node_modules/(${MODULES})/.+\\.js$`]: ["@swc/jest", { jsc: { target: "es2022" } }],
  },
  transformIgnorePatterns: [`node_modules/(?!(${MODULES})/)`],
  setupFiles: ["<rootDir>/tests/setup.ts"],
  testTimeout: 60_000,
  maxWorkers: 2,
};
