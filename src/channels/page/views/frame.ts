import { html } from 'hono/html';
import type { Language } from '../../../greenhouse/member.ts';
import type { Assets } from '../assets.ts';

/** Escaped HTML: every value put into it was escaped. */
export type Markup = ReturnType<typeof html>;

export interface Frame {
  readonly title: string;
  readonly language: Language;
  readonly assets: Assets;
  readonly isLive?: boolean;
  readonly body: Markup;
}

/** The document around a page. */
export function frame({ title, language, assets, isLive = false, body }: Frame): Markup {
  const script = html`<script type="module" src="${assets['page.js'].href}"></script>`;
  return html`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content">
<meta name="color-scheme" content="light dark">
<meta name="theme-color" content="#f1efe7" media="(prefers-color-scheme: light)">
<meta name="theme-color" content="#121817" media="(prefers-color-scheme: dark)">
<title>${title}</title>
<link rel="icon" type="image/svg+xml" href="${assets['icon.svg'].href}">
<link rel="stylesheet" href="${assets['page.css'].href}">
${isLive ? script : ''}
</head>
<body>
${body}
</body>
</html>`;
}
