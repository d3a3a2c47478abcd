package org.satline.program.print;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.satline.program.drawing.Drawing;
import org.satline.program.drawing.SvgWriter;
import org.satline.program.file.BadInputException;
import org.satline.program.file.WholeFile;

/** What a drawing is written as; the ending of the file's name says which. */
public enum PictureFile {
    /** Scalable Vector Graphics 1.1; text stays text. */
    SVG {
        @Override
        void write(Drawing drawing, OutputStream out) throws IOException {
            out.write(SvgWriter.file(drawing).getBytes(StandardCharsets.UTF_8));
        }
    },
    /** Pixels, for what shows no vectors; 300 a unit of hundred. */
    PNG {
        @Override
        void write(Drawing drawing, OutputStream out) throws IOException {
            PixelWriter.write(drawing, out);
        }
    },
    /** One page of the size of the drawing; text stays text. */
    PDF {
        @Override
        void write(Drawing drawing, OutputStream out) throws IOException {
            PdfWriter.write(drawing, out);
        }
    };

    abstract void write(Drawing drawing, OutputStream out) throws IOException;

    /**
     * Tells what the ending of a name asks for.
     *
     * @param file a name ending in .svg, .png or .pdf
     * @return the kind
     * @throws BadInputException if the ending is another one
     */
    public static PictureFile named(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        for (PictureFile kind : values()) {
            if (name.endsWith("." + kind.name().toLowerCase(Locale.ROOT))) {
                return kind;
            }
        }
        throw new BadInputException(file + ": a file name that ends in .svg, .png or .pdf is expected");
    }

    /**
     * Writes a drawing as the file's name asks for; the file appears whole or not at all.
     *
     * @param file where to
     * @param drawing what is drawn
     * @throws BadInputException if the name's ending is unknown or the file cannot be written
     */
    public static void write(Path file, Drawing drawing) {
        PictureFile kind = named(file);
        try (WholeFile whole = WholeFile.startedFor(file)) {
            kind.write(drawing, whole.stream());
            whole.commit();
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be written (" + e.getMessage() + ")");
        }
    }
}
