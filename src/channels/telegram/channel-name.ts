export const channel = 'telegram';
