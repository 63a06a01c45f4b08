import type { Desk } from '../../assistant/desk.ts';
import type { GreenhouseId, Store } from '../../assistant/ports/store.ts';
import type { Fault } from '../../greenhouse/file/fault.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { Language } from '../../greenhouse/member.ts';
import type { DrawPicture, Wording } from '../../wording/wording.ts';

type PageStore = Pick<
  Store,
  'receive' | 'unhandled' | 'pending' | 'settle' | 'history' | 'read' | 'photos'
>;
type PageDesk = Pick<Desk, 'handle' | 'standing'>;

/** All that the page needs from outside. */
export interface PageOptions {
  readonly store: PageStore;
  readonly desk: PageDesk;
  readonly greenhouseId: GreenhouseId;
  readonly wordings: Readonly<Record<Language, Wording>>;
  readonly drawPicture: DrawPicture;
  readonly nowMs: () => number;
  /** Told of what went wrong while `doing` something; the visitor has been answered already. */
  readonly report: (error: unknown, doing: string) => void;
  /** Whether the database answers, for `/readyz`. */
  readonly isReady: () => Promise<boolean>;
  /** Makes a checked set-up the greenhouse's own; the faults why it cannot be, none where it was done. */
  readonly replaceGreenhouse: (greenhouse: Greenhouse) => Promise<readonly Fault[]>;
  /** The folder that holds `page.css`, `page.js` and `icon.svg`. */
  readonly assetsFolder: string;
  /** Where to listen; port 0 takes a free one. */
  readonly address: { readonly host: string; readonly port: number };
  /** Host names of the public kind by which the page is visited, `duties.example.org`. */
  readonly hostNames: readonly string[];
}

export const channel = 'page';
