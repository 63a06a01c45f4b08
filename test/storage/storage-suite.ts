import { decidedSuite } from './suite/decided-suite.ts';
import { handlingSuite } from './suite/handling-suite.ts';
import { householdSuite } from './suite/household-suite.ts';
import { inboxSuite } from './suite/inbox-suite.ts';
import { logbookSuite } from './suite/logbook-suite.ts';
import { outboxSuite } from './suite/outbox-suite.ts';
import { photoSuite } from './suite/photo-suite.ts';
import { setUpSuite } from './suite/set-up-suite.ts';
import type { Subject } from './suite/storage-under-test.ts';

/** What every database must do that the bot is to run on. */
export function storageSuite(subject: Subject): void {
  setUpSuite(subject);
  inboxSuite(subject);
  handlingSuite(subject);
  decidedSuite(subject);
  logbookSuite(subject);
  outboxSuite(subject);
  householdSuite(subject);
  photoSuite(subject);
}
