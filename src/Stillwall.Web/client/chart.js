export const chart = 1;
