/** One entry of the menu (`BotCommand`). */
export type MenuCommand = { readonly command: string; readonly description: string };

/** For whom a menu is (`BotCommandScope`), as a key: the type and the ids it needs. */
export type ScopeKey = string;

/** The menus the bot has set, by scope and language. */
export class CommandMenus {
  readonly #menus = new Map<string, readonly MenuCommand[]>();

  set(scope: ScopeKey, language: string, commands: readonly MenuCommand[]): void {
    if (commands.length === 0) this.#menus.delete(`${scope}|${language}`);
    else this.#menus.set(`${scope}|${language}`, commands);
  }

  get(scope: ScopeKey, language: string): readonly MenuCommand[] {
    return this.#menus.get(`${scope}|${language}`) ?? [];
  }

  /** What a member is shown: the first menu found, in the documented order of scopes, own language before none. */
  shown(scopes: readonly ScopeKey[], language: string): readonly MenuCommand[] {
    for (const scope of scopes) {
      for (const tongue of [language, '']) {
        const menu = this.get(scope, tongue);
        if (menu.length > 0) return menu;
      }
    }
    return [];
  }
}
