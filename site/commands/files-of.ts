import sirv, { type Options, type RequestHandler } from "sirv";

/**
 * Answers with the files of a folder. A file that is gone when its turn comes, as where a course is
 * built anew while it is served, ends its own answer and not the server.
 */
export function filesOf(folder: string, options?: Options): RequestHandler {
  const answer = sirv(folder, options);
  return (request, response, next) => {
    response.on("pipe", (file) => file.on("error", () => response.destroy()));
    return answer(request, response, next);
  };
}
