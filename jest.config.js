/** Tests run straight from TypeScript; types are checked by `tsc` in the same `npm test`. */
module.exports = {
  testMatch: ["<rootDir>/tests/**/*.test.ts"],
  transform: { "^.+\\.tsx?$": ["@swc/jest", { jsc: { target: "es2022", parser: { syntax: "typescript" } } }] },
  setupFiles: ["<rootDir>/tests/setup.ts"],
  testTimeout: 60_000,
  maxWorkers: 2,
};
