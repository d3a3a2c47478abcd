package org.satline.program;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the program inside the test.
 *
 * @param status exit status
 * @param out what it printed
 * @param err what it complained about
 */
record ProgramRun(int status, String out, String err) {
    static ProgramRun of(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            words[i] = args[i].toString();
        }
        int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new ProgramRun(status, out.toString(), err.toString());
    }
}
