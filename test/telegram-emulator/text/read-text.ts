import type { RequestParameters } from '../http/request-parameters.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import { cleanText } from './clean-text.ts';
import { withFoundEntities } from './found-entities.ts';
import { checkEntities } from './given-entities.ts';
import { parseHtml } from './html-markup.ts';
import { parseMarkdownV2 } from './markdown-markup.ts';
import type { StyledText } from './styled-text.ts';

/** Documented: 1-4096 characters after entities parsing. */
const LONGEST_TEXT = 4096;
/** Documented: 0-1024 characters after entities parsing. */
const LONGEST_CAPTION = 1024;

/** The `text` of a call, marked up by `parse_mode` or `entities`. */
export const readText = (parameters: RequestParameters): StyledText | Refusal => {
  const styled = readStyled(parameters, 'text', 'entities');
  if (styled instanceof Refusal) return styled;
  if (styled.text === '') return badRequest('message text is empty');
  return styled.text.length > LONGEST_TEXT ? badRequest('message is too long') : styled;
};

/** The `caption` of a call, which may be empty. */
export const readCaption = (parameters: RequestParameters): StyledText | Refusal => {
  const styled = readStyled(parameters, 'caption', 'caption_entities');
  if (styled instanceof Refusal) return styled;
  return styled.text.length > LONGEST_CAPTION ? badRequest('message caption is too long') : styled;
};

const readStyled = (
  parameters: RequestParameters,
  textName: string,
  entitiesName: string,
): StyledText | Refusal => {
  const parsed = parse(parameters, parameters.text(textName) ?? '', entitiesName);
  if (parsed instanceof Refusal) return parsed;
  const clean = cleanText(parsed);
  return { text: clean.text, entities: withFoundEntities(clean.text, clean.entities) };
};

const parse = (
  parameters: RequestParameters,
  text: string,
  entitiesName: string,
): StyledText | Refusal => {
  const mode = parameters.text('parse_mode')?.toLowerCase() ?? '';
  if (mode === 'html') return parseHtml(text);
  if (mode === 'markdownv2') return parseMarkdownV2(text);
  if (mode === 'markdown') return new Refusal(501, 'the emulator knows no legacy Markdown');
  if (mode !== '' && mode !== 'none') return badRequest('unsupported parse_mode');
  if (!parameters.has(entitiesName)) return { text, entities: [] };
  const checked = checkEntities(text, parameters.json(entitiesName));
  return checked instanceof Refusal ? checked : { text, entities: checked.entities };
};
