const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const jpeg = [0xff, 0xd8, 0xff];
const riff = [0x52, 0x49, 0x46, 0x46];
const webp = [0x57, 0x45, 0x42, 0x50];

/** Whether it is a JPEG, PNG or WebP by its first bytes, since a file's name and stated type may be wrong. */
export function isPicture(bytes: Uint8Array): boolean {
  // Between the two marks of a WebP stands the length of the file.
  const isWebp = startsWith(bytes, riff) && startsWith(bytes.subarray(8), webp);
  return startsWith(bytes, jpeg) || startsWith(bytes, png) || isWebp;
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, position) => bytes[position] === byte);
}
