/** The package's own types don't resolve under Node's module rules; only what the bench uses. */
declare module '@microsoft/recognizers-text-number-with-unit' {
  const recognizers: {
    recognizeDimension(
      text: string,
      culture: string,
    ): { text: string; resolution: { value: string; unit: string } }[];
  };
  export default recognizers;
}
