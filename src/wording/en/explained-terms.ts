import type { ExplainedTerm } from '../../understanding/wishes/wish.ts';

/** Words of the trade for somebody who has never grown anything, in two lines each. */
const explained: Readonly<Record<ExplainedTerm, readonly [string, string]>> = {
  ec: [
    'EC says how much plant food is dissolved in the water: the higher, the stronger.',
    'It is read with an EC meter. Too low: the plants go hungry; too high: their roots suffer.',
  ],
  ph: [
    'pH says how acid the water is: 7 is neutral, lower is acid, higher is alkaline.',
    'It is read with a pH meter. Outside the wanted range the plants cannot take up their food.',
  ],
  reservoir: [
    'The reservoir is the tank or tub that holds the water with the plant food.',
    'The roots drink from it, so it must never run dry.',
  ],
  'top-up': [
    'A top-up is water added to what is still in the reservoir, nothing poured away.',
    'Tell me how much went in, and I know how fast the plants drink.',
  ],
  kratky: [
    'Kratky is growing over still water, without a pump or air: the roots reach down as the water sinks.',
    'The air gap above the water lets them breathe, so a Kratky jar is never filled back to the brim.',
  ],
  brim: [
    'The brim is the fullest that a reservoir is meant to be, not its very edge.',
    'Levels are counted from it: 50% is half of what it holds at the brim.',
  ],
  'low-mark': [
    'The low mark is the level that a reservoir should not sink below.',
    'I ask for a top-up before it is reached.',
  ],
  calibration: [
    'Calibrating is holding a meter into a solution of a known value and seeing what it shows.',
    'Meters drift: after a calibration I know by how much, and can trust what is read.',
  ],
  'reservoir-change': [
    'A reservoir change is the old solution poured away and new mixed in its place, up to the brim.',
    'I say when it is due. “how do I change …” with the name of a system tells the steps.',
  ],
  round: [
    'The round is the list of what is due, which I send every morning.',
    'Answer it with what was read and done; “what is due” shows it again.',
  ],
  'ph-down': [
    'pH down is an acid that makes the pH of the water lower, a few mL at a time.',
    'Ask “how much pH down” before any is added. Wear goggles and gloves.',
  ],
  'ph-up': [
    'pH up is an alkali that makes the pH of the water higher, a few mL at a time.',
    'Ask “how much pH up” before any is added. Wear goggles and gloves.',
  ],
  nft: [
    'NFT (nutrient film technique): a thin film of solution runs through gutters day and night, and the roots take food and air from it.',
    'It holds little water, so the roots dry out within hours when the pump stops.',
  ],
  dwc: [
    'DWC (deep water culture): the roots hang in the solution all the time, and air is blown through it.',
    'Without air the water loses its oxygen within hours, so the air pump matters most.',
  ],
  'flood-and-drain': [
    'Flood and drain: a pump floods the bench now and then, and the water runs back while the roots breathe.',
    'Measure and dose in its reservoir, when the bench has drained.',
  ],
  'tap-water': [
    'Tap water mostly holds lime: it drives the pH up again and again, takes more acid, and brings salts that the plants leave behind. Rain water holds hardly any.',
    'Better than a dry tank all the same: in need top up with it, write it down (“note: tap water in …”), then measure pH and EC.',
  ],
  drinking: [
    'No. It holds plant food, and perhaps acid or alkali; nobody should drink it, nor should animals.',
    'Whoever has swallowed some calls the poison number at once and says what is in it, from the label. Bring nothing up.',
  ],
  children: [
    'With an adult beside them children may pour plain water, look, count and pick. Acid, alkali and concentrates, meters’ solutions and plugs are not for them.',
    'Keep the bottles out of their reach. Who may dose, the grower says to me: “show … the acids”, for adults who were shown how.',
  ],
  photos: [
    'The grower may send me a photo with the name of a system or of a kind of work: I keep it and show it with the steps.',
    'I cannot see what is on it, so say what you found in words, for example “brown roots in …”.',
  ],
  languages: [
    'I understand English and German, whichever you write in, and answer you in yours.',
    '“talk English to me” or “sprich Deutsch mit mir” changes it.',
  ],
  privacy: [
    'What you report goes into the logbook with your name and the time, and everyone of the household can ask for it. The grower hears of dangers and of what waits for them.',
    'I keep what is written to me. Nothing that is not logged is told to others, but do not write to me what nobody may see.',
  ],
  sureness: [
    'I can be wrong. I see nothing myself: my figures rest on what was told and measured, on the weather, and on what is usual where nothing was told.',
    '“why exactly” tells the sums. When it looks different there, measure and tell me: what was measured counts.',
  ],
  'putting-right': [
    'Nothing is lost: “undo” takes back what you told last, also by the button under my receipt.',
    'Or just say what is right: “sorry, 5.6 not 5.4”, “I meant the …”. You may also edit your message.',
  ],
  overdosing: [
    'Stop, add nothing more, and above all do not add the opposite on a guess. Stir or let it run, wait 15 to 30 minutes, measure pH and EC and tell me, with how much went in.',
    'If it is far out, half of the water or all of it has to be changed: tell the grower at once.',
  ],
  joining: [
    'The grower writes to me in the messenger, in private: “invite a helper”, or “invite” and the name of somebody who is in the set-up already. I answer with a link; whoever opens it is in and can write to me.',
    'Until then somebody who is in passes on what was done.',
  ],
  'running-dry': [
    'Without water the roots dry out: within hours where they hang in air or a thin film, later where pebbles or wool hold some. Top up at once and look at the leaves.',
    'A pump that runs dry breaks: unplug it until there is water again.',
  ],
};

export function explainedText(term: ExplainedTerm): string {
  return explained[term].join('\n');
}
