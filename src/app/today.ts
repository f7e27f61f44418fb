/** The day on this device's calendar, as records keep it: 2026-03-04. */
export function today(): string {
  const now = new Date();
  const month = String(now.getMonth() + 1).padStart(2, '0');
  return `${String(now.getFullYear())}-${month}-${String(now.getDate()).padStart(2, '0')}`;
}

const SHAPE = /^\d{4}-\d{2}-\d{2}$/;

/** A day that is on the calendar. */
export function isDay(text: string): boolean {
  if (!SHAPE.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
