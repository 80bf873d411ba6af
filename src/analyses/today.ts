/** The coach's own day, ISO (YYYY-MM-DD): the day on their clock, not the one in Greenwich. */
export function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
