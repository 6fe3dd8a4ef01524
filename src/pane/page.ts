/** Writes the pane page, which the add-in opens beside the sheet. */

/** @param officeScript address from which the page takes office.js */
export function panePage(officeScript: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${escaped(policy(officeScript))}">
<meta name="color-scheme" content="light dark">
<title>Piecewise: quilting functions</title>
<link rel="icon" href="icons/icon-32.png">
<link rel="stylesheet" href="pane.css">
<script src="${escaped(officeScript)}"></script>
<script defer src="functions.js"></script>
<script defer src="pane.js"></script>
</head>
<body class="pane-page">
<header class="hidden-words"><h1>Piecewise</h1></header>
<main id="pane"></main>
<footer class="foot"><a href="about.html">Help, privacy and terms</a></footer>
<noscript>The pane needs JavaScript.</noscript>
</body>
</html>
`;
}

/**
 * Scripts come from this address and the vendor's only, and nothing is sent anywhere. The vendor's library sets styles from its
 * script.
 */
function policy(officeScript: string): string {
  const vendor = URL.canParse(officeScript) ? ` ${new URL(officeScript).origin}` : "";
  return (
    `default-src 'none'; script-src 'self'${vendor}; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; ` +
    "connect-src 'self'; base-uri 'none'; form-action 'none'"
  );
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
