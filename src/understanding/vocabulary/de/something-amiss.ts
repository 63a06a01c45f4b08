/** That something is wrong, verb first: as a question it asks how it goes. */
export const somethingAmiss = [
  'stimmt was nicht',
  'stimmt etwas nicht',
  'stimmt da was nicht',
  'stimmt da etwas nicht',
  'stimmt irgendwas nicht',
  'stimmt irgendetwas nicht',
  'stimmt da irgendwas nicht',
  'passt was nicht',
  'passt etwas nicht',
  'passt irgendwas nicht',
  'ist was faul',
  'ist irgendwas faul',
  'ist irgendwas los',
  'ist was los',
];
