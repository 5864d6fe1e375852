/** The operating system's error codes in plain words. */
const reasons: ReadonlyMap<string, string> = new Map([
  ["EACCES", "permission is denied"],
  ["EPERM", "permission is denied"],
  ["EROFS", "the disk is read-only"],
  ["ENOSPC", "the disk is full"],
  ["ENOENT", "the folder does not exist"],
  ["EEXIST", "something else of that name is there"],
  ["ENOTDIR", "part of the path is not a folder"],
  ["EISDIR", "it is a folder"],
  ["ENAMETOOLONG", "the name is too long"],
  ["ELOOP", "the links go in a circle"],
  ["EIO", "the disk reports an error"],
  ["EMFILE", "too many files are open"],
]);

const codeOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? "";

/** Whether the system says that there is nothing at the path. */
export const isAbsent = (error: unknown): boolean => ["ENOENT", "ENOTDIR"].includes(codeOf(error));

export const systemReason = (error: unknown): string => {
  const code = codeOf(error);
  return reasons.get(code) ?? (code === "" ? "an unknown reason" : `the system says ${code}`);
};
