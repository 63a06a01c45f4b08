import type { System } from '../../../greenhouse/system.ts';

/** Crops of the trade, which a set-up names by one word; any other goes by what the household calls it. */
const cropNames: ReadonlyMap<string, string> = new Map([
  ['tomato', 'Tomate'],
  ['cucumber', 'Gurke'],
  ['basil', 'Basilikum'],
  ['lettuce', 'Salat'],
  ['pepper', 'Paprika'],
  ['chilli', 'Chili'],
  ['strawberry', 'Erdbeere'],
  ['spinach', 'Spinat'],
  ['kale', 'Grünkohl'],
  ['chard', 'Mangold'],
  ['mint', 'Minze'],
  ['parsley', 'Petersilie'],
  ['coriander', 'Koriander'],
  ['chives', 'Schnittlauch'],
  ['rocket', 'Rucola'],
  ['pak choi', 'Pak Choi'],
  ['aubergine', 'Aubergine'],
  ['courgette', 'Zucchini'],
  ['bean', 'Bohne'],
  ['pea', 'Erbse'],
  ['melon', 'Melone'],
  ['herb', 'Kräuter'],
  ['watercress', 'Brunnenkresse'],
  ['celery', 'Sellerie'],
  ['dill', 'Dill'],
  ['thyme', 'Thymian'],
  ['oregano', 'Oregano'],
  ['sage', 'Salbei'],
  ['rosemary', 'Rosmarin'],
  ['radish', 'Radieschen'],
  ['onion', 'Zwiebel'],
]);

/** `12 × Salat`; nichts gepflanzt: `nichts gepflanzt`. */
export function cropText({ crop, plants }: Pick<System, 'crop' | 'plants'>): string {
  if (plants === 0) return 'nichts gepflanzt';
  return crop === null ? `${plants} Pflanzen` : `${plants} × ${cropNames.get(crop) ?? crop}`;
}
