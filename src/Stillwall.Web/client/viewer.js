export const viewer = 1;
