/** An hour of the day for people: "7 am", "noon", "6 pm", "midnight". */
export function hourOfDay(hour: number): string {
  const whole = Math.round(hour) % 24;
  if (whole === 0) return 'midnight';
  if (whole === 12) return 'noon';
  return whole < 12 ? `${whole} am` : `${whole - 12} pm`;
}
