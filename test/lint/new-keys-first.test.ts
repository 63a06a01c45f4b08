import { ESLint } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, expect, it } from 'vitest';
import { newKeysFirst } from '../../lint/new-keys-first.js';

/** In a project of its own, so that no more is compiled than what is linted. */
const file = 'linted-here.ts';
const options: ESLint.Options = {
  overrideConfigFile: true,
  overrideConfig: {
    files: ['**/*.ts'],
    languageOptions: {
      parser: tseslint.parser,
      parserOptions: { projectService: { allowDefaultProject: [file] } },
    },
    plugins: { own: { rules: { 'new-keys-first': newKeysFirst } } },
    rules: { 'own/new-keys-first': 'error' },
  },
};
const reader = new ESLint(options);
const mender = new ESLint({ ...options, fix: true });

const point = 'interface Point { readonly x: number; readonly name?: string }';

async function faultsOf(source: string): Promise<readonly string[]> {
  const [result] = await reader.lintText(source, { filePath: file });
  return result!.messages.map(({ message }) => message);
}

describe('The lint rule for keys that a spread object lacks', () => {
  it('names the ones that stand behind it, and puts them before it', async () => {
    const source = `${point}\nexport const f = (one: Point) => ({ ...one, x: 2, y: 1, /* why */ z: 3 });\n`;
    expect(await faultsOf(source)).toEqual([
      'Write keys that the spread object lacks before it: y, z.',
    ]);
    const [fixed] = await mender.lintText(source, { filePath: file });
    expect(fixed!.output?.replace(/\s+/g, ' ')).toContain('{ y: 1, /* why */ z: 3, ...one, x: 2 }');
  });

  it('looks at each kind of a union', async () => {
    const union = `${point}\ninterface Other { readonly y: number }`;
    expect(
      await faultsOf(`${union}\nexport const f = (one: Point | Other) => ({ ...one, y: 1 });`),
    ).toEqual([]);
    expect(
      await faultsOf(`${union}\nexport const f = (one: Point | Other) => ({ ...one, z: 1 });`),
    ).toHaveLength(1);
  });

  it.each([
    ['keys that it has, also where they may be left out', '({ ...one, x: 1, name: "" })'],
    ['keys before it', '({ y: 1, ...one })'],
    ['objects without a spread', '({ y: one.x })'],
  ])('leaves %s alone', async (_, made) => {
    expect(await faultsOf(`${point}\nexport const f = (one: Point) => ${made};`)).toEqual([]);
  });

  it.each([
    ['a record', 'one: Record<string, number>'],
    ['any', 'one: any'],
    ['a type parameter', 'one: T'],
  ])('says nothing of a spread of %s, which may hold anything', async (_, one) => {
    const source = `export const f = <T extends object>(${one}) => ({ ...one, y: 1 });`;
    expect(await faultsOf(source)).toEqual([]);
  });
});
