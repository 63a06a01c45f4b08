import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * The folder that holds package.json: the code runs from `dist/` or from `src/`, and finds its
 * migrations and assets from there.
 *
 * @throws Error where no folder above holds a package.json.
 */
export function packageRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('no package.json is found above the running code');
    folder = above;
  }
  return folder;
}
