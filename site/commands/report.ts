import { answerTo } from "../report/command.js";

// a path as the person who typed it means it: npm itself works at the top of the repository
const { out, err, status } = answerTo(process.argv.slice(2), process.env.INIT_CWD ?? ".");
process.stderr.write(err);
process.stdout.write(out);
process.exitCode = status;
