import type { Rule } from 'eslint';

export declare const newKeysFirst: Rule.RuleModule;
