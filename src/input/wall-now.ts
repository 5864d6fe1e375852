/** The wall clock where the program runs, in seconds from 1970 as if in UTC. */
export const wallNow = (now: Date): number =>
  Date.UTC(
    now.getFullYear(),
    now.getMonth(),
    now.getDate(),
    now.getHours(),
    now.getMinutes(),
    now.getSeconds(),
  ) / 1000;
