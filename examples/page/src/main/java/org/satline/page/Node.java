package org.satline.page;

import org.jspecify.annotations.Nullable;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/** An element of the document. What is written into it is text, never markup. */
final class Node {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private final JSObject element;

    /** What is done when something happens to an element. */
    @JSFunctor
    interface Handler extends JSObject {
        void handle();
    }

    private Node(JSObject element) {
        this.element = element;
    }

    static Node of(String tag) {
        return new Node(make(tag));
    }

    static Node of(String tag, String style) {
        return of(tag).set("class", style);
    }

    static Node svg(String tag) {
        return new Node(make(SVG, tag));
    }

    static Node known(String id) {
        return new Node(find(id));
    }

    Node set(String name, String value) {
        put(element, name, value);
        return this;
    }

    Node set(String name, double value) {
        return set(name, String.valueOf(Math.round(value * 100) / 100.0));
    }

    Node without(String name) {
        remove(element, name);
        return this;
    }

    Node text(String text) {
        write(element, text);
        return this;
    }

    Node add(@Nullable Node... children) {
        for (Node child : children) {
            if (child != null) {
                append(element, child.element);
            }
        }
        return this;
    }

    Node add(Iterable<Node> children) {
        children.forEach(child -> append(element, child.element));
        return this;
    }

    Node cleared() {
        write(element, "");
        return this;
    }

    Node on(String event, Handler handler) {
        listen(element, event, handler);
        return this;
    }

    String value() {
        return valueOf(element);
    }

    Node value(String value) {
        setValue(element, value);
        return this;
    }

    boolean isChecked() {
        return checked(element);
    }

    Node focus() {
        focus(element);
        return this;
    }

    /** Scrolls it into sight. */
    void reach() {
        reach(element);
    }

    void click() {
        click(element);
    }

    JSObject element() {
        return element;
    }

    /** A button of a kind that submits nothing. */
    static Node button(String style, String label, Handler pressed) {
        return of("button", style).set("type", "button").text(label).on("click", pressed);
    }

    @JSBody(params = "tag", script = "return document.createElement(tag);")
    private static native JSObject make(String tag);

    @JSBody(
            params = {"space", "tag"},
            script = "return document.createElementNS(space, tag);")
    private static native JSObject make(String space, String tag);

    @JSBody(params = "id", script = "return document.getElementById(id);")
    private static native JSObject find(String id);

    @JSBody(
            params = {"element", "name", "value"},
            script = "element.setAttribute(name, value);")
    private static native void put(JSObject element, String name, String value);

    @JSBody(
            params = {"element", "name"},
            script = "element.removeAttribute(name);")
    private static native void remove(JSObject element, String name);

    @JSBody(
            params = {"element", "text"},
            script = "element.textContent = text;")
    private static native void write(JSObject element, String text);

    @JSBody(
            params = {"element", "child"},
            script = "element.appendChild(child);")
    private static native void append(JSObject element, JSObject child);

    @JSBody(
            params = {"element", "event", "handler"},
            script = "element.addEventListener(event, function() { handler(); });")
    private static native void listen(JSObject element, String event, Handler handler);

    @JSBody(params = "element", script = "return element.value;")
    private static native String valueOf(JSObject element);

    @JSBody(
            params = {"element", "value"},
            script = "element.value = value;")
    private static native void setValue(JSObject element, String value);

    @JSBody(params = "element", script = "return element.checked === true;")
    private static native boolean checked(JSObject element);

    @JSBody(params = "element", script = "element.focus({preventScroll: true});")
    private static native void focus(JSObject element);

    @JSBody(params = "element", script = "element.scrollIntoView({block: 'nearest'});")
    private static native void reach(JSObject element);

    @JSBody(params = "element", script = "element.click();")
    private static native void click(JSObject element);
}
