package org.satline.page;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/**
 * What the page asks of the browser beside the document: memory of the device, clock, files. Nothing here reaches the
 * network.
 */
final class Browser {
    /** What is done with the text of a file. */
    @JSFunctor
    interface TextHandler extends JSObject {
        void handle(String text);
    }

    private Browser() {}

    /** What the device remembers under a name; empty where it remembers nothing, or may not. */
    @JSBody(
            params = "name",
            script = "try { return localStorage.getItem('satline.' + name) || ''; } catch (e) { return ''; }")
    static native String remembered(String name);

    @JSBody(
            params = {"name", "text"},
            script = "try { localStorage.setItem('satline.' + name, text); return true; } catch (e) { return false; }")
    static native boolean remember(String name, String text);

    /** Day on site, as 2026-07-14. */
    @JSBody(
            script = "var d = new Date(); function p(n) { return (n < 10 ? '0' : '') + n; }"
                    + " return d.getFullYear() + '-' + p(d.getMonth() + 1) + '-' + p(d.getDate());")
    static native String today();

    /** Time on site, as 14:35. */
    @JSBody(
            script = "var d = new Date(); function p(n) { return (n < 10 ? '0' : '') + n; }"
                    + " return p(d.getHours()) + ':' + p(d.getMinutes());")
    static native String clock();

    @JSBody(script = "return Date.now();")
    static native double now();

    /** Language that the device asks for. */
    @JSBody(script = "return (navigator.language || 'en').slice(0, 2);")
    static native String language();

    /** Milliseconds of a clock for measuring. */
    @JSBody(script = "return performance.now();")
    static native double stopwatch();

    @JSBody(
            params = {"handler", "milliseconds"},
            script = "return setTimeout(function() { handler(); }, milliseconds);")
    static native int later(Node.Handler handler, int milliseconds);

    @JSBody(params = "timer", script = "clearTimeout(timer);")
    static native void never(int timer);

    @JSBody(script = "if (navigator.vibrate) { navigator.vibrate([400, 200, 400]); }")
    static native void shake();

    @JSBody(script = "window.scrollTo(0, 0);")
    static native void toTop();

    @JSBody(params = "text", script = "return confirm(text);")
    static native boolean confirmed(String text);

    @JSBody(script = "print();")
    static native void print();

    /** Hands a text over as a file. */
    @JSBody(
            params = {"name", "type", "text"},
            script = "var a = document.createElement('a'); a.download = name;"
                    + " a.href = URL.createObjectURL(new Blob([text], {type: type})); a.click();"
                    + " setTimeout(function() { URL.revokeObjectURL(a.href); }, 1000);")
    static native void hand(String name, String type, String text);

    /** Reads the first file that was chosen in an input. */
    @JSBody(
            params = {"input", "handler"},
            script = "var file = input.files && input.files[0];"
                    + " if (file) { file.text().then(function(t) { handler(t); }); }")
    static native void read(JSObject input, TextHandler handler);

    /** Tells the document its language and look. */
    @JSBody(
            params = {"language", "look"},
            script = "document.documentElement.lang = language; document.documentElement.dataset.look = look;")
    static native void dress(String language, String look);

    /** How long something took, for whoever measures. */
    @JSBody(
            params = {"name", "milliseconds"},
            script = "(globalThis.satlineTimes = globalThis.satlineTimes || {})[name] = milliseconds;")
    static native void note(String name, double milliseconds);
}
