interface Said {
  readonly to?: string;
  readonly buttons?: readonly (readonly { readonly label: string; readonly press: string }[])[];
}

/**
 * A case's line as the rehearsal takes it. A case names the button that is pressed by what stands on it
 * (`"presses": "Left tub"`), since a token is only known once the bot has sent it: the newest button of
 * that label that the member was sent.
 */
export function pressedButton(line: object, said: readonly object[]): object {
  if (!('presses' in line && 'from' in line)) return line;
  const { presses, ...pressing } = line;
  const button = (said as readonly Said[])
    .filter(({ to }) => to === line.from)
    .flatMap(({ buttons }) => buttons ?? [])
    .flat()
    .findLast(({ label }) => label === presses);
  if (!button) throw new Error(`no button "${String(presses)}" was sent to ${String(line.from)}`);
  return { ...pressing, press: button.press };
}
