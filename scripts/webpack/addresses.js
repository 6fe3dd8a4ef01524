/**
 * Where the add-in is published, and where its pages take office.js from: said here and nowhere else.
 *
 * The manifests in manifest/ are written for the development address; a build rewrites them for the address in
 * PIECEWISE_ADDRESS, which may end in a path.
 */
const DEVELOPMENT = "https://localhost:3000";

/** A build for the vendor's store must load office.js from the vendor. The local copy serves development and tests. */
const OFFICE_FROM_VENDOR = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const OFFICE_LOCAL = "office/office.js";

/** The public address of this build, without a slash at its end. */
function publicAddress(wanted = process.env.PIECEWISE_ADDRESS || DEVELOPMENT) {
  const refuse = (why) => {
    throw new Error(`PIECEWISE_ADDRESS ${why}, not "${wanted}"`);
  };
  const address = URL.canParse(wanted) && !/\s/.test(wanted) ? new URL(wanted) : undefined;
  if (address?.protocol !== "https:") refuse("must be an https address, such as https://quilts.example/addin");
  if (address.username || address.password) refuse("must hold no name or password, for everyone can read it");
  if (address.search || address.hash) refuse("must end with its path, without ? or #");
  return address.href.replace(/\/+$/, "");
}

/** A manifest with the development address replaced by `address`; lists of domains take its host only. */
function rewriteManifest(text, address) {
  const { origin, host } = new URL(address);
  return text
    .replaceAll(`<AppDomain>${DEVELOPMENT}</AppDomain>`, `<AppDomain>${origin}</AppDomain>`)
    .replaceAll(`"${new URL(DEVELOPMENT).host}"`, `"${host}"`)
    .replaceAll(DEVELOPMENT, address);
}

module.exports = { DEVELOPMENT, OFFICE_FROM_VENDOR, OFFICE_LOCAL, publicAddress, rewriteManifest };
