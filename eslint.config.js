import tseslint from 'typescript-eslint';
import { newKeysFirst } from './lint/new-keys-first.js';

export default tseslint.config(
  { ignores: ['dist/', 'coverage/', 'drizzle/', 'data/', 'src/channels/page/assets/'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      // Numbers in sentences and keys are the daily bread of this code.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // Node 20's own style for indexed records; noPropertyAccessFromIndexSignature asks for it.
      '@typescript-eslint/dot-notation': 'off',
      // Discriminated unions read best as types; both forms are used on purpose.
      '@typescript-eslint/consistent-type-definitions': 'off',
      // `return use(x)` in a function without a value reads as "that is all there is to do".
      '@typescript-eslint/no-confusing-void-expression': [
        'error',
        { ignoreVoidReturningFunctions: true },
      ],
      // Leaving fields out by naming them is what a rest is for.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      // A bound checked by the loop or the caller is asserted, not tested a second time.
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
  {
    // The two rooms where the same few objects are made anew for every message and every day.
    files: ['src/understanding/**/*.ts', 'src/estimation/**/*.ts'],
    plugins: { own: { rules: { 'new-keys-first': newKeysFirst } } },
    rules: { 'own/new-keys-first': 'error' },
  },
  {
    // A run of the program answers many households, and a run of the tests shares its modules.
    files: ['src/**/*.ts'],
    ignores: ['src/main/**'],
    rules: {
      'no-restricted-syntax': [
        'error',
        {
          selector:
            ':matches(Program, Program > ExportNamedDeclaration) > VariableDeclaration[kind=/^(let|var)$/]',
          message:
            'A module remembers nothing: a memo is a Map or WeakMap by what it was made from.',
        },
      ],
    },
  },
);
