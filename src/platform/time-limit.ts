/** @throws Error when it takes longer; what is under way is left to itself */
export async function inTime<Result>(work: Promise<Result>, milliseconds: number): Promise<Result> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(
      () => reject(new Error(`it took longer than ${milliseconds / 1_000} s`)),
      milliseconds,
    );
  });
  // What fails after it is too late has been told of as late.
  work.catch(() => undefined);
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}
