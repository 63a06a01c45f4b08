export const afterTopUp = 'level after a top-up';
