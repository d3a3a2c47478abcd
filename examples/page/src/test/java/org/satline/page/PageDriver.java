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
        browser.touch("document.getElementById('input')");
        browser.type(text);
        next();
    }

    void number(String digits, String unit) {
        browser.touch("document.getElementById('input')");
        browser.type(digits);
        browser.touch("[...document.querySelectorAll('.unit')].find(e => e.textContent === '" + unit + "')");
        next();
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
