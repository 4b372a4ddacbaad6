/** A time of the log in the reader's own day and hour. */
export function timeOf(at: string): string {
  const time = new Date(at);
  const two = (number: number) => String(number).padStart(2, "0");
  const day = `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
  return `${day} ${two(time.getHours())}:${two(time.getMinutes())}`;
}
