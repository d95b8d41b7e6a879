package simmerpoint.quantities;

import simmerpoint.trial.spot.CardResult;

/** What {@code trial --card} finds: a row for each distance. */
public final class CardQuantities {
    private static final Fields<CardResult.Point> POINT = Fields.<CardResult.Point>none()
            .number(
                    "from_middle_m",
                    "of the card, along the axis",
                    p -> p.reading().distance())
            .number(
                    "measured_width_m",
                    "of the spot at half of its brightness",
                    p -> p.reading().width())
            .number("planned_width_m", "of the traced spot of the dish as meant", CardResult.Point::planned)
            .number("fitted_width_m", "of that of the fitted dish", CardResult.Point::fitted)
            .optionalNumber(
                    "radius_50_m",
                    "of a photograph, about its centroid",
                    p -> p.reading().photo().stream()
                            .mapToDouble(photo -> photo.profile().radius50())
                            .findFirst())
            .optionalNumber(
                    "radius_90_m",
                    "of a photograph",
                    p -> p.reading().photo().stream()
                            .mapToDouble(photo -> photo.profile().radius90())
                            .findFirst())
            .optionalNumber(
                    "saturated_share",
                    "of the bright half of a photograph",
                    p -> p.reading().photo().stream()
                            .mapToDouble(photo -> photo.saturated())
                            .findFirst());

    private static final Fields<CardResult> ALL = Fields.<CardResult>none()
            .estimate(
                    "fitted_slope_error_rad",
                    "standard deviation per axis, with that of the figure",
                    CardResult::slopeError)
            .estimate("fitted_focal_length_m", "with its standard deviation", CardResult::focalLength)
            .number("misfit", "measured less fitted, in standard deviations of a reading", CardResult::misfit)
            .rows("spots", "the nearest to the dish first", CardResult::points, POINT);

    /** JSON and CSV. */
    public static final Document<CardResult> DOCUMENT = new Document<>(
            "card",
            result -> result.scenario().scenario().title(),
            CardResult::seed,
            ALL,
            new Table<>(POINT, result -> result.points().stream()));

    private CardQuantities() {}
}
