package org.satline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** No room but this one speaks to a person: messages of exceptions, citations and formulas excepted. */
class NoSentencesTest {
    private static final int WORDS_OF_A_SENTENCE = 4;
    private static final Pattern WORD = Pattern.compile("(?<![^\\s(])\\p{L}{2,}(?![\\p{L}_\\d])");
    /** What is thrown, or made for somebody who throws it. */
    private static final Pattern THROWN = Pattern.compile(
            "\\bthrow\\b|Exception\\b|\\b(fault|cause|error|guarded|refusing|above|from|within|no|refused|optional|require)\\("
                    + "|OutOfValidity|\\b\\w*(FAULT|ADVICE|fault|advice)\\w*\\s*=\\s*");
    /** Constants and arguments that say where something comes from. */
    private static final Pattern CITATION = Pattern.compile(
            "(?i)\\b\\w*(basis|source|citation|practice|formula|norm)\\w*\\s*(=\\s*$|=[^;]*$)|citing\\($");
    /** A source by itself: a law or standard by its number, or the statement that there is none. */
    private static final Pattern SOURCE =
            Pattern.compile("\\d CFR \\d|JCGM \\d|Regulation \\(EU\\)|\\(from memory\\)|no source|secondary text");
    /** The names of the parts of a record, the label of a constant of an enum, and the key of a row of a resource. */
    private static final Pattern NAMES = Pattern.compile(
            "Parts\\.(required|numbers)\\(\\s*$|\\bvalue\\(\\s*$|(^|[,}])\\s*[A-Z][A-Z_0-9]+\\([^()]*$");
    /** Numbers between signs, as in {@code m = gross - tare}. */
    private static final Pattern FORMULA = Pattern.compile("^[^ ]+( [^ ]+)? (=|<=|>=|<|>) .*|.* [-+*/=] .*");

    private static boolean isSentence(SourceText.Literal literal) {
        return WORD.matcher(literal.text()).results().count() >= WORDS_OF_A_SENTENCE
                && !literal.file().toString().endsWith("Exception.java")
                && !THROWN.matcher(literal.statement()).find()
                && !CITATION.matcher(literal.statement()).find()
                && !SOURCE.matcher(literal.text()).find()
                && !NAMES.matcher(literal.statement()).find()
                && !FORMULA.matcher(literal.text()).matches();
    }

    private static List<String> sentences(List<SourceText.Literal> literals) {
        return literals.stream()
                .filter(NoSentencesTest::isSentence)
                .map(each -> each.file() + ":" + each.line() + " " + each.text())
                .toList();
    }

    @Test
    void noRoomHoldsASentence() {
        assertThat(SourceText.literals("")).hasSizeGreaterThan(3000);
        assertThat(sentences(SourceText.literals(""))).isEmpty();
    }

    @Test
    void theScanTellsSentencesFromTheRest() {
        String source = """
                class A {
                    static final String BASIS = "common practice in the trade, no source";
                    // "words in a comment are not seen"
                    String a = "shut the valve" + x + " and go away from here";
                    char c = '"';
                    void b() {
                        Parts.required("one two three four", 1);
                        throw new IllegalStateException("this tank is too full " + y + " to be filled again");
                    }
                    String d = text("stop now and weigh the cylinder");
                    Step e = new Step("netMass", "m = gross mass - tare weight", given, "read it from the scale");
                }
                """;
        List<SourceText.Literal> literals = SourceText.literals(Path.of("A.java"), source);
        assertThat(literals.stream().filter(NoSentencesTest::isSentence))
                .extracting(SourceText.Literal::text)
                .containsExactly(" and go away from here", "stop now and weigh the cylinder", "read it from the scale");
        assertThat(literals.get(1).line()).isEqualTo(4);
    }
}
