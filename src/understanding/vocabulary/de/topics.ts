import type { TopicAsked } from '../../wishes/wish.ts';
import type { Words } from '../vocabulary.ts';

const amiss = ['zu viel', 'zuviel', 'viel zu viel', 'doppelt so viel', 'doppelt'];

/** What a question is about where nothing else in it is understood; the first that is found holds. */
export const topics: Words<TopicAsked> = {
  overdosing: [
    ...amiss.flatMap((much) =>
      [
        'säure',
        'dünger',
        'ph minus',
        'ph plus',
        'ph-minus',
        'davon',
        'reingekippt',
        'rein',
        'gegeben',
      ].map((what) => `${much} ${what}`),
    ),
    ...['überdosiert', 'überdosis', 'überdüngt', 'zweimal gedüngt', 'doppelt gedüngt'],
  ],
  'putting-right': [
    ...['vertippt', 'verschrieben', 'tippfehler', 'falsch eingetragen', 'falsch geschrieben'],
    ...['falsch eingegeben', 'was falsches', 'falsche zahl', 'falscher wert', 'falschen wert'],
    ...['einen fehler', 'mein fehler', 'zurücknehmen', 'rückgängig', 'rückgängig machen'],
    ...['berichtigen', 'korrigieren', 'wieder weg', 'löschen', 'ausbessern', 'aus versehen'],
  ],
  children: [
    ...['kind', 'kinder', 'kindern', 'tochter', 'sohn', 'enkel', 'enkelin', 'enkelkind'],
    ...['enkelkinder', 'kleiner', 'kleine', 'kleinen', 'baby', 'neffe', 'nichte', 'kids'],
  ],
  drinking: [
    ...['trinken', 'trinkt', 'trinkbar', 'trinkwasser', 'probieren', 'verschluckt', 'geschluckt'],
    ...['getrunken', 'davon trinken', 'daraus trinken', 'hund säuft', 'katze säuft'],
  ],
  'tap-water': [
    ...['leitungswasser', 'hahnenwasser', 'aus der leitung', 'aus dem hahn', 'vom hahn'],
    ...['gartenschlauch', 'aus dem schlauch', 'mit dem schlauch', 'regenwasser', 'stadtwasser'],
  ],
  photos: [
    ...['foto', 'fotos', 'ein bild schicken', 'bild schicken', 'bilder schicken', 'bild senden'],
    ...['bild machen', 'fotografieren', 'abfotografieren'],
  ],
  languages: [
    ...[
      'englisch',
      'auf deutsch',
      'deutsch',
      'welche sprache',
      'welche sprachen',
      'andere sprache',
    ],
    ...['sprachen', 'dialekt', 'bairisch', 'schwäbisch', 'platt'],
  ],
  privacy: [
    ...['was ich schreibe', 'was ich dir schreibe', 'was ich sage', 'was wir schreiben'],
    ...[
      'meine nachrichten',
      'liest du mit',
      'alles mit',
      'mitlesen',
      'liest mit',
      'petzt',
      'petzen',
    ],
    ...[
      'weitersagen',
      'weitererzählen',
      'erzählst du',
      'verrätst du',
      'sagst du mama',
      'sagst du papa',
    ],
    ...['geheim', 'privat', 'vertraulich', 'spionierst', 'überwachst', 'wer sieht', 'wer liest'],
    ...[
      'speicherst du',
      'merkst du dir',
      'meinen daten',
      'meine daten',
      'unseren daten',
      'der mama',
    ],
  ],
  joining: [
    ...['auch mithelfen', 'auch helfen', 'jemanden einladen', 'noch jemanden', 'neuer helfer'],
    ...['neue helferin', 'helfer einladen', 'mitmachen', 'beitreten', 'dazuholen'],
  ],
  'running-dry': [
    ...[
      'trocken läuft',
      'trockenläuft',
      'trocken laufen',
      'leer läuft',
      'leerläuft',
      'vertrocknen',
    ],
    ...['trocken fällt', 'austrocknet', 'austrocknen', 'kein wasser mehr', 'wurzeln trocken'],
  ],
  brim: ['wie voll ist voll', 'wann ist es voll', 'wann voll', 'zu voll', 'voll genug'],
  sureness: [
    ...['dir sicher', 'bist sicher', 'woher weißt du', 'woher weisst du', 'wie kommst du darauf'],
    ...[
      'wie kommst du drauf',
      'kann das stimmen',
      'stimmt das',
      'irrst du',
      'dich irren',
      'täuschst',
    ],
    ...[
      'dir trauen',
      'dir glauben',
      'dir vertrauen',
      'glauben dir',
      'geraten',
      'rätst du',
      'ratest du',
    ],
    ...[
      'ausgedacht',
      'denkst du dir',
      'wie genau',
      'wie verlässlich',
      'wie zuverlässig',
      'wirklich wahr',
    ],
  ],
  ec: ['wozu ec', 'wozu der ec', 'warum ec'],
};
