import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

interface Asset {
  readonly body: string;
  readonly mediaType: string;
  /** The address with a mark of the content, so that it may be kept for good. */
  readonly href: string;
}

export type Assets = Readonly<Record<AssetName, Asset>>;
type AssetName = keyof typeof mediaTypes;

const mediaTypes = {
  'page.css': 'text/css; charset=utf-8',
  'page.js': 'text/javascript; charset=utf-8',
  'icon.svg': 'image/svg+xml',
} as const;

export const assetNames = Object.keys(mediaTypes) as readonly AssetName[];

/** @throws Error where a file of the page is missing. */
export async function loadAssets(folder: string): Promise<Assets> {
  const load = async (name: AssetName): Promise<Asset> => {
    const body = await readFile(join(folder, name), 'utf8');
    const mark = createHash('sha256').update(body).digest('hex').slice(0, 12);
    return { body, mediaType: mediaTypes[name], href: `/assets/${name}?v=${mark}` };
  };
  return {
    'page.css': await load('page.css'),
    'page.js': await load('page.js'),
    'icon.svg': await load('icon.svg'),
  };
}
