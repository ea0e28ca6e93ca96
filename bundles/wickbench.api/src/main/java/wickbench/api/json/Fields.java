package wickbench.api.json;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;

/**
 * Takes the members of an object one by one and collects what is wrong with them.
 *
 * <p>A getter that complains returns a stand-in (empty text, zero), so that all complaints of a document come at once; the
 * value is built only by {@link #finish}, when there were none. A member nobody asked for is a complaint too.
 */
public final class Fields {
    private final String source;
    private final String path;
    private final Json.Obj object;
    private final List<Complaint> complaints;
    private final Set<String> asked = new LinkedHashSet<>();
    private final List<Fields> children = new ArrayList<>();

    private Fields(String source, String path, Json.Obj object, List<Complaint> complaints) {
        this.source = source;
        this.path = path;
        this.object = object;
        this.complaints = complaints;
    }

    /** Starts on a document. */
    public static Fields of(String source, Json.Obj object) {
        return new Fields(source, "", object, new ArrayList<>());
    }

    public boolean has(String name) {
        asked.add(name);
        return object.get(name).isPresent();
    }

    public String text(String name) {
        return optionalText(name).orElseGet(() -> missing(name, "a text", ""));
    }

    public Optional<String> optionalText(String name) {
        return take(name, Json.Text.class, "a text").map(Json.Text::value).filter(text -> {
            if (text.isBlank()) {
                complain(name, "is blank");
            }
            return true;
        });
    }

    public BigDecimal decimal(String name) {
        return optionalDecimal(name).orElseGet(() -> missing(name, "a number", BigDecimal.ZERO));
    }

    public Optional<BigDecimal> optionalDecimal(String name) {
        return take(name, Json.Num.class, "a number").map(Json.Num::value);
    }

    public long whole(String name) {
        return optionalWhole(name).orElseGet(() -> missing(name, "a whole number", 0L));
    }

    public Optional<Long> optionalWhole(String name) {
        return optionalDecimal(name).map(value -> {
            try {
                return value.longValueExact();
            } catch (ArithmeticException e) {
                return complain(name, "expected a whole number, found " + value.toPlainString(), 0L);
            }
        });
    }

    public boolean flag(String name) {
        return take(name, Json.Bool.class, "true or false")
                .map(Json.Bool::value)
                .orElseGet(() -> missing(name, "true or false", false));
    }

    /** Takes a text and turns it into a value; an {@link IllegalArgumentException}'s message becomes the complaint. */
    public <T> Optional<T> optional(String name, Function<String, T> parse) {
        return optionalText(name).flatMap(text -> {
            try {
                return Optional.of(parse.apply(text));
            } catch (IllegalArgumentException e) {
                complain(name, e.getMessage());
                return Optional.empty();
            }
        });
    }

    public Optional<Instant> optionalInstant(String name) {
        return optional(name, text -> {
            try {
                return Instant.parse(text);
            } catch (DateTimeParseException e) {
                throw new IllegalArgumentException(
                        "expected a UTC time such as 2026-03-01T08:00:00.000Z, found " + text);
            }
        });
    }

    public Optional<Fields> optionalChild(String name) {
        return take(name, Json.Obj.class, "an object").map(child -> enter(path(name), child));
    }

    /** Takes a member that must be an object; an empty one stands in when it is missing. */
    public Fields child(String name) {
        return optionalChild(name)
                .orElseGet(() ->
                        missing(name, "an object", new Fields(source, path(name), Json.object(), new ArrayList<>())));
    }

    /** Takes an array of objects; empty when absent. */
    public List<Fields> children(String name) {
        List<Fields> found = new ArrayList<>();
        List<Json> items = items(name);
        for (int i = 0; i < items.size(); i++) {
            String where = name + "[" + i + "]";
            if (items.get(i) instanceof Json.Obj child) {
                found.add(enter(path(where), child));
            } else {
                complain(where, "expected an object");
            }
        }
        return found;
    }

    /** Takes an array of texts; empty when absent. */
    public List<String> texts(String name) {
        List<String> found = new ArrayList<>();
        for (Json item : items(name)) {
            if (item instanceof Json.Text text) {
                found.add(text.value());
            } else {
                complain(name, "expected texts only");
            }
        }
        return found;
    }

    /** Returns the names of all members, so that an object may be read as a table. */
    public Set<String> names() {
        return object.members().keySet();
    }

    /** Notes what is wrong with a member. */
    public void complain(String name, String text) {
        complaints.add(Complaint.of(source, path(name), text));
    }

    /** Builds the value if nothing was wrong with the document. */
    public <T> Checked<T> finish(Supplier<T> build) {
        refuseUnasked();
        return complaints.isEmpty() ? Checked.good(build.get()) : Checked.bad(complaints);
    }

    /** Tells whether nothing has been wrong so far. */
    public boolean clean() {
        return complaints.isEmpty();
    }

    private void refuseUnasked() {
        for (String name : object.members().keySet()) {
            if (!asked.contains(name)) {
                complain(name, "is not a field of this format");
            }
        }
        children.forEach(Fields::refuseUnasked);
    }

    private Fields enter(String where, Json.Obj child) {
        Fields fields = new Fields(source, where, child, complaints);
        children.add(fields);
        return fields;
    }

    private List<Json> items(String name) {
        return take(name, Json.Arr.class, "a list").map(Json.Arr::items).orElse(List.of());
    }

    private <T extends Json> Optional<T> take(String name, Class<T> type, String expected) {
        asked.add(name);
        Json value = object.members().get(name);
        if (type.isInstance(value)) {
            return Optional.of(type.cast(value));
        }
        if (value != null) {
            complain(name, "expected " + expected);
        }
        return Optional.empty();
    }

    private <T> T missing(String name, String expected, T standIn) {
        // a member of the wrong type has been complained of already
        return object.get(name).isPresent() ? standIn : complain(name, "is missing; expected " + expected, standIn);
    }

    private <T> T complain(String name, String text, T standIn) {
        complain(name, text);
        return standIn;
    }

    private String path(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
