/** The public address of a build, without a slash at its end. */
export function publicAddress(wanted?: string): string;
