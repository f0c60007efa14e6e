/** A duration as a clock shows it: `4:05`, `1:04:05`. @param seconds below zero is none yet */
export function writtenDuration(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const two = (number: number) => String(number).padStart(2, '0');
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}
