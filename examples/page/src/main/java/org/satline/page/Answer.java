package org.satline.page;

import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CylinderCheck;
import org.satline.explanation.Finding;
import org.satline.visit.FieldException;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;

/**
 * What the page has to say of a visit as it stands: a report, or what keeps it from being read. Immutable.
 *
 * @param fields the fields that were read
 * @param report the report, where they could be read
 * @param field the field that could not be used; empty where none is named
 * @param problem what is wrong, in the words of the reader; empty where nothing is
 * @param dangers what the readable part shows, where the whole cannot be read
 */
record Answer(
        FieldValue.Fields fields, Optional<VisitReport> report, String field, String problem, List<Finding> dangers) {

    /** The answer as the visit stands; a cylinder that stands as before is not checked anew. */
    static Answer of(Session session, CylinderCheck.Memory checks) {
        FieldValue.Fields fields = session.readable();
        try {
            fields = session.judged();
            VisitReport report = VisitReporter.report(VisitFile.read(fields), checks);
            return new Answer(fields, Optional.of(report), "", "", List.of());
        } catch (FieldException e) {
            return new Answer(fields, Optional.empty(), e.path(), problem(e), dangers(fields));
        } catch (IllegalArgumentException e) {
            return new Answer(fields, Optional.empty(), "", String.valueOf(e.getMessage()), dangers(fields));
        }
    }

    private static String problem(FieldException e) {
        String message = String.valueOf(e.getMessage());
        String path = e.path() + ": ";
        return message.startsWith(path) ? message.substring(path.length()) : message;
    }

    private static List<Finding> dangers(FieldValue.Fields fields) {
        return VisitFile.dangersInReadablePart(fields);
    }
}
