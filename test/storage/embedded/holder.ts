import { openEmbedded } from '../../../src/storage/embedded/open-embedded.ts';
import { cacheFolder, migrationsFolder } from '../folders.ts';

// A process that opens a folder, says so, and holds it until it is killed.
const [folder] = process.argv.slice(2);
try {
  const store = await openEmbedded({ folder: folder!, migrationsFolder, cacheFolder });
  const [known] = await store.greenhouses();
  console.log(`open with ${known?.name ?? 'nothing'}`);
  setInterval(() => undefined, 1000);
} catch (error) {
  console.log(`refused: ${(error as Error).message}`);
}
