/** The message corpora, by file under `test/`; a sealed one is not looked at until the end. */
export const corpora: readonly { readonly file: string; readonly isSealed: boolean }[] = [
  { file: 'fixtures/messages.jsonl', isSealed: false },
  { file: 'understanding/corpus/english-open.jsonl', isSealed: false },
  { file: 'understanding/corpus/german-open.jsonl', isSealed: false },
  { file: 'understanding/corpus/tried.jsonl', isSealed: false },
  { file: 'understanding/corpus/clauses.jsonl', isSealed: false },
  { file: 'understanding/corpus/english-second-open.jsonl', isSealed: false },
  { file: 'understanding/corpus/german-second-open.jsonl', isSealed: false },
  { file: 'understanding/corpus/english-third-open.jsonl', isSealed: false },
  { file: 'understanding/corpus/german-third-open.jsonl', isSealed: false },
  { file: 'understanding/corpus/fourth.jsonl', isSealed: false },
  { file: 'understanding/corpus/english-sealed.jsonl', isSealed: true },
  { file: 'understanding/corpus/german-sealed.jsonl', isSealed: true },
  { file: 'understanding/corpus/english-second-sealed.jsonl', isSealed: true },
  { file: 'understanding/corpus/german-second-sealed.jsonl', isSealed: true },
  { file: 'understanding/corpus/english-third-sealed.jsonl', isSealed: true },
  { file: 'understanding/corpus/german-third-sealed.jsonl', isSealed: true },
];
