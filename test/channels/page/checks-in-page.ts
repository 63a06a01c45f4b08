/**
 * Scripts that run in the page under test; they are texts because the browser's types are no part of
 * this program.
 */

/** What is tapped and is lower than 44 pixels (WCAG 2.2, 2.5.5: target size, enhanced). */
export const smallTargets = `
  [...document.querySelectorAll('button, a.chip, select, summary, #say')]
    .filter((target) => target.checkVisibility() && target.getBoundingClientRect().height < 44)
    .map((target) => target.outerHTML)
`;

/**
 * Texts whose contrast with their ground is under 4.5 to 1 (WCAG 2.2, 1.4.3, with the relative
 * luminance defined there).
 */
export const faintTexts = `
  (() => {
    const luminance = (colour) => {
      const [red, green, blue] = colour.match(/[\\d.]+/g).map((part) => {
        const share = Number(part) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const ground = (element) => {
      for (let at = element; at; at = at.parentElement) {
        const colour = getComputedStyle(at).backgroundColor;
        if (colour !== 'rgba(0, 0, 0, 0)') return colour;
      }
      return 'rgb(255, 255, 255)';
    };
    return [...document.querySelectorAll('body *')]
      .filter((element) =>
        [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim()),
      )
      .filter((element) => {
        const pair = [luminance(getComputedStyle(element).color), luminance(ground(element))];
        return (Math.max(...pair) + 0.05) / (Math.min(...pair) + 0.05) < 4.5;
      })
      .map((element) => element.outerHTML.slice(0, 120));
  })()
`;
