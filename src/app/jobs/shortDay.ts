const sameYear = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});
const otherYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** "22 Nov, 16:40", or with its year when that is another one. */
export function shortDay(time: number, now = Date.now()): string {
  const there = new Date(time);
  return (there.getFullYear() === new Date(now).getFullYear() ? sameYear : otherYear).format(there);
}

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });

export function dayOnly(time: number): string {
  return day.format(new Date(time));
}
