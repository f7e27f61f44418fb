/** The name last typed as "who answers", kept with the device: the same person mostly answers all four. */
const KEY = 'slabtooth.answeredBy';

export function answeredBy(): string {
  try {
    return localStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

export function setAnsweredBy(name: string): void {
  try {
    localStorage.setItem(KEY, name);
  } catch {
    // Private windows may forbid it: then the name is typed again next time.
  }
}
