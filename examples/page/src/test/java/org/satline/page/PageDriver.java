package org.satline.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;

/** A person with the page in the hand: answers its questions, reads its answer. */
final class PageDriver {
    private final Chromium browser;

    PageDriver(Chromium browser) {
        this.browser = browser;
    }

    /** Starts with an empty device in a language and a unit system. */
    void begin(Path page, String language, String units) {
        browser.beAPhone();
        browser.open(page);
        browser.run("localStorage.clear(); localStorage.setItem('satline.language', '" + language
                + "'); localStorage.setItem('satline.units', '" + units + "')");
        browser.open(page);
        browser.until("document.documentElement.lang === '" + language + "'");
    }

    void go(String screen) {
        browser.touch("document.getElementById('way-" + screen + "')");
        browser.until("document.getElementById('way-" + screen + "').getAttribute('aria-current') === 'page'");
    }

    /** Types a number with its unit as a choice beside it, or a text, then goes on. */
    void answer(String text) {
        typed(text);
        next();
    }

    void number(String digits, String unit) {
        typed(digits);
        browser.touch("[...document.querySelectorAll('.unit')].find(e => e.textContent === '" + unit + "')");
        next();
    }

    /** A busy browser may take a while from the touch to the letters. */
    private void typed(String text) {
        browser.touch("document.getElementById('input')");
        browser.until("document.activeElement === document.getElementById('input')");
        browser.type(text);
        browser.until("document.getElementById('input').value === " + quoted(text));
    }

    void day(String day) {
        browser.run("(function() { const e = document.getElementById('input'); e.value = '" + day
                + "'; e.dispatchEvent(new Event('input')); })()");
        next();
    }

    void choose(String word) {
        browser.touch("document.querySelector('[data-word=\"" + word + "\"]')");
        next();
    }

    /** Types the beginning of a name and takes the first that is offered. */
    void gas(String typed) {
        browser.touch("document.getElementById('input')");
        browser.type(typed);
        browser.touch("document.querySelector('.gas .choice')");
        next();
    }

    /** Until the answer has followed what was typed. */
    void settle() {
        browser.until("document.getElementById('answer').getAttribute('aria-busy') === 'false'");
    }

    void next() {
        settle();
        String before = heading();
        browser.touch("document.getElementById('next')");
        browser.until("document.getElementById('heading').textContent !== " + quoted(before));
    }

    String heading() {
        return browser.run("document.getElementById('heading').textContent").asText();
    }

    String answer() {
        settle();
        return browser.run("document.getElementById('answer').innerText").asText();
    }

    /** The lines of the answer, names and texts one behind the other. */
    String lines() {
        settle();
        return browser.run("document.querySelector('#answer .lines').textContent")
                .asText();
    }

    /** What the facts under an element say, one a line: name, then value. */
    String text(String id) {
        return browser.run("document.getElementById('" + id + "').textContent").asText();
    }

    /** Moves a slider as a finger does: its value, then the event that follows. */
    void slide(String id, int value) {
        browser.run("(function() { const e = document.getElementById('" + id + "'); e.value = '" + value
                + "'; e.dispatchEvent(new Event('input')); })()");
    }

    void pick(String id, String value) {
        browser.run("(function() { const e = document.getElementById('" + id + "'); e.value = '" + value
                + "'; e.dispatchEvent(new Event('change')); })()");
    }

    void touch(String id) {
        browser.touch("document.getElementById('" + id + "')");
    }

    /** What does not fit on the display: a page that scrolls sideways, letters of a picture beyond its edge, cut words in buttons. */
    JsonNode clipped() {
        return browser.run("(function() { const out = []; const root = document.documentElement;"
                + " if (root.scrollWidth > innerWidth) { out.push('page ' + root.scrollWidth + ' of ' + innerWidth); }"
                + " for (const t of document.querySelectorAll('svg text')) {"
                + "   const a = t.getBoundingClientRect(), b = t.ownerSVGElement.getBoundingClientRect();"
                + "   if (a.left < b.left - 1 || a.right > b.right + 1 || a.top < b.top - 1 || a.bottom > b.bottom + 1) {"
                + "     out.push('letters ' + t.textContent); } }"
                + " for (const e of document.querySelectorAll('button, label, summary, dd, dt, output')) {"
                + "   if (e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1) { out.push('cut ' + e.textContent); } }"
                + " return out; })()");
    }

    JsonNode accessibility(String axe) {
        browser.run(axe + "; true");
        return browser.run(
                "axe.run(document, {resultTypes: ['violations']}).then(r => r.violations.map(v => v.id + ': '"
                        + " + v.nodes.map(n => n.html.slice(0, 160) + n.failureSummary).join(' | ')))");
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
