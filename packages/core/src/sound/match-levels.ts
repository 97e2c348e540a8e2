/** The highest sample of anything that is played, in decibels below full scale: room for headphones that are loud. */
export const HEADPHONE_PEAK_DBFS = -12;

/** Root of the mean square of all samples; 0 for none. */
export function rootMeanSquare(samples: Float32Array): number {
  if (samples.length === 0) return 0;
  let sum = 0;
  for (const sample of samples) sum += sample * sample;
  return Math.sqrt(sum / samples.length);
}

/**
 * The same sounds at levels that can be compared: the louder would else win.
 *
 *     gᵢ = r / rmsᵢ        r such that the highest peak of all is the limit
 *
 * Each gets the same root mean square over its whole length, and all of them together are as high as the headphone limit
 * of −12 dB below full scale allows.
 *
 * @param sounds  in any unit; silence stays silent
 * @returns new samples, in the same order
 *
 * Holds for: sounds alike in kind and length, as two scales are; root mean square is not loudness for unlike ones.
 * Error: levels agree to the rounding of 32-bit samples.
 * Source: our own; −12 dBFS is a choice on the careful side.
 * @example  Math.max(...matchLevels([Float32Array.of(0, 0.5, -0.5)])[0]).toFixed(4)  // = 0.2512
 */
export function matchLevels(sounds: readonly Float32Array[]): Float32Array[] {
  const limit = 10 ** (HEADPHONE_PEAK_DBFS / 20);
  const levels = sounds.map(rootMeanSquare);
  let highestCrest = 0;
  sounds.forEach((samples, which) => {
    if (levels[which] === 0) return;
    let peak = 0;
    for (const sample of samples) peak = Math.max(peak, Math.abs(sample));
    highestCrest = Math.max(highestCrest, peak / levels[which]!);
  });
  return sounds.map((samples, which) => {
    const gain = levels[which] === 0 ? 0 : limit / (highestCrest * levels[which]!);
    // Rounding to 32 bits must not carry a sample past the limit.
    return samples.map((sample) => Math.max(-limit, Math.min(limit, sample * gain)));
  });
}
