import type { TopicAsked } from '../../wishes/wish.ts';
import type { Words } from '../vocabulary.ts';

/** What a question is about where nothing else in it is understood; the first that is found holds. */
export const topics: Words<TopicAsked> = {
  overdosing: [
    ...[
      'acid',
      'ph down',
      'ph up',
      'nutrient',
      'nutrients',
      'feed',
      'fertiliser',
      'fertilizer',
    ].map((product) => `too much ${product}`),
    ...['put', 'poured', 'added', 'gave', 'tipped', 'put in', 'add', 'pour'].map(
      (verb) => `${verb} too much`,
    ),
    ...['overdosed', 'overdose', 'double the dose', 'twice the dose', 'dosed twice'],
  ],
  'putting-right': [
    ...['typed it wrong', 'typed wrong', 'typed that wrong', 'wrote it wrong', 'got it wrong'],
    ...['typo', 'wrong number', 'wrong value', 'mistyped', 'made a mistake', 'by mistake'],
    ...['take it back', 'take that back', 'correct it', 'correct that', 'fix it', 'fix that'],
    ...['undo it', 'undo that', 'undo something', 'undo this', 'delete it', 'delete that'],
    ...['put it right', 'change my message', 'edit my message', 'wrong entry'],
  ],
  children: [
    ...['kid', 'kids', 'child', 'children', 'son', 'daughter', 'toddler', 'grandson'],
    ...['granddaughter', 'grandchild', 'grandchildren', 'grandkids', 'little one', 'little ones'],
    ...['nephew', 'niece', 'my boy', 'my girl', 'baby'],
  ],
  drinking: [
    ...['i drink', 'we drink', 'drink it', 'drink this', 'drink that', 'drink from', 'to drink it'],
    ...['drinkable', 'drinking water', 'taste it', 'swallowed', 'swallow', 'swallow it'],
    ...['dog drink', 'cat drink', 'dog drank', 'cat drank', 'drank from', 'drank it'],
  ],
  'tap-water': [
    ...['tap water', 'tapwater', 'mains water', 'the hose', 'hose water', 'hosepipe'],
    ...['from the tap', 'the tap', 'garden hose', 'city water', 'rain water', 'rainwater'],
  ],
  photos: [
    ...['photo', 'photos', 'pic', 'pics', 'picture to you', 'you a picture', 'you pictures'],
    ...['a picture of it', 'take a picture', 'took a picture', 'send a picture'],
  ],
  languages: [
    ...['german', 'deutsch', 'in english', 'speak english', 'understand english', 'your language'],
    ...['what language', 'which language', 'other languages', 'what languages', 'which languages'],
  ],
  privacy: [
    ...[
      'what i write',
      'what i type',
      'what i say',
      'what we write',
      'my messages',
      'our messages',
    ],
    ...['tell on me', 'tell my mum', 'tell my mom', 'tell my dad', 'tell anyone', 'tell anybody'],
    ...[
      'tell the others',
      'tell everyone',
      'tell the grower',
      'spy',
      'spying',
      'private',
      'secret',
    ],
    ...['see what i', 'read along', 'read everything', 'read all', 'who reads', 'who sees'],
    ...[
      'who else sees',
      'who else reads',
      'remember everything',
      'listening to us',
      'my data',
      'our data',
      'reading this',
    ],
  ],
  joining: [
    ...['want to help too', 'wants to help too', 'get someone in', 'add a person', 'add a helper'],
    ...['sign up', 'sign someone up', 'new helper', 'another helper', 'join this', 'join the bot'],
  ],
  'running-dry': [
    ...['run dry', 'runs dry', 'ran dry', 'dry out', 'dries out', 'dried out', 'goes dry'],
    ...['roots dry', 'roots get dry', 'runs out of water', 'run out of water'],
  ],
  brim: ['how full is full', 'too full', 'know when it is full', "know when it's full", 'its full'],
  sureness: [
    ...['you sure', 'sure about', 'you know that', 'how do you know', 'how can you know'],
    ...['how did you know', 'be wrong', 'you wrong', 'you ever wrong', 'trust you', 'believe you'],
    ...['trust your', 'believe your', 'guessing', 'make that up', 'making it up', 'making that up'],
    ...['certain about', 'how accurate', 'how reliable', 'how exact', 'that right', 'that true'],
    ...['where do you get', 'where did you get', 'figure that out', 'work that out'],
  ],
  ec: ['what is the ec for', 'why ec', 'ec for'],
};
