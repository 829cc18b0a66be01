const longestName = 80;

/** A name for a file of the plan: its title, without what file systems refuse. */
export function fileNameOf(title: string, ending: string): string {
  const plain = title
    .normalize('NFC')
    .replace(/[^\p{L}\p{N} ,()+-]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, longestName)
    .trim();
  return `${plain === '' ? 'Plan' : plain}.${ending}`;
}

/** Hands bytes to the user as a file. */
export function handOver(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the address after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
