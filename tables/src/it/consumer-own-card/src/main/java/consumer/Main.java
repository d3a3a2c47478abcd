package consumer;

import java.io.IOException;
import java.io.InputStream;
import org.satline.charge.ChargeRow;
import org.satline.charge.ChargeScreen;
import org.satline.charge.ScreenedCharge;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.PrintedCard;

/** A program of somebody else that knows nothing of its refrigerant but a printed card. */
public final class Main {
    private Main() {}

    /** Fails where the card does not answer within its stated error, or answers what it cannot know. */
    public static void main(String[] args) throws IOException {
        Refrigerant refrigerant = Refrigerant.substance("Field 134", "as on the card", 0.10203, "the card");
        PrintedCard card;
        try (InputStream in = Main.class.getResourceAsStream("card.csv")) {
            card = PrintedCard.read(refrigerant, "card of the maker", "card.csv", in.readAllBytes());
        }
        // printed between: 414.89 kPa at 10 degC
        double celsius = card.dewTemperature(Pressure.ofKilopascals(414.89)).celsius();
        check(Math.abs(celsius - 10) <= card.limitOfErrorK(), "dew point " + celsius);
        try {
            card.dewPressure(Temperature.ofCelsius(70));
            check(false, "answered beyond the card");
        } catch (OutOfValidityException beyond) {
            check(beyond.high() < 340, "range " + beyond.high());
        }
        ChargeRow row = ChargeRow.of(refrigerant, MeteringDevice.EXPANSION_VALVE)
                .suction(362_230, 287)
                .liquid(1_130_700, 311)
                .read(Place.OUTDOOR_AIR, 303)
                .target(6)
                .build();
        check(ChargeScreen.of(card).screen(row) instanceof ScreenedCharge.Level, "screened by the card");
        System.out.println("consumer with a card: " + ChargeScreen.of(card).screen(row));
    }

    private static void check(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}
