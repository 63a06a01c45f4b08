import type { Alert } from '../../assistant/replies/reply.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { adviceAlert } from './advice/advice-alert.ts';
import { familyAlert } from './family/family-alert.ts';
import { notDeliveredText } from './not-delivered.ts';

/** A warning that nobody asked for: what happened, and what to do. */
export function alertText(alert: Alert, s: Speaker): string {
  switch (alert.kind) {
    case 'outage':
    case 'outage-reminder':
    case 'all-clear':
    case 'dose-wanted':
    case 'surprise':
      return adviceAlert(alert, s);
    case 'undone':
    case 'your-days':
    case 'done-by-other':
    case 'trouble':
    case 'danger':
    case 'given-back':
    case 'turn-passed':
    case 'days-dropped':
    case 'relieved':
    case 'claim-off':
    case 'leaving':
    case 'named-for':
      return familyAlert(alert, s);
    case 'not-delivered':
      return notDeliveredText(alert);
    case 'messages-may-be-lost': {
      const whole = Math.max(1, Math.round(alert.hours));
      const howLong = whole === 1 ? 'an hour' : `${whole} hours`;
      return `I was out of reach for ${howLong}, and messages may be lost. If you got no receipt, please send it again.`;
    }
  }
}
