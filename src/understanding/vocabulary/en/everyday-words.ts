/** Words of direction, size, order and colour: they name a system only where a name can stand. */
export const everydayWords: readonly string[] = `
left right north south east west upper lower top bottom front back middle centre center big small large little long
short old new first second third fourth last inner outer near far high low deep shallow tall wide narrow round square
main spare red green blue white black yellow grey gray brown pink orange purple hot cold warm cool dry wet light dark
sunny shady early late young baby giant mini tiny fat thin soft hard good best lucky happy home house shed porch window
door corner side end kitchen garage balcony patio deck terrace cellar attic roof wall floor outside inside indoor
outdoor summer winter spring autumn one two three four five six upstairs downstairs single double half full empty fast
slow open closed fresh clean loose fish rain river stone wood wooden steel glass plastic tin copper silver gold barrel
barrels box boxes bin bins tank tanks pot pots
`
  .trim()
  .split(/\s+/);
