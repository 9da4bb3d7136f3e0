/** A file into the folder for downloads. */

/** Long enough for any browser to have begun the download. */
const REVOKE_AFTER = 60_000;

export function download(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const anchor = document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), REVOKE_AFTER);
}
