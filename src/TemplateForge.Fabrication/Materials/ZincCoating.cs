namespace TemplateForge.Fabrication;

/// <summary>The zinc on a galvanised sheet.</summary>
/// <param name="BothFaces">What a designation as Z275 says: g/m² on both faces together, the mean of three spots.</param>
/// <param name="LeastOnOneFace">What one face has at least, in g/m²; less than half, for zinc does not lie evenly.</param>
public readonly record struct ZincCoating(double BothFaces, double LeastOnOneFace)
{
    /// <summary>7.14 g/m² of zinc are 1 µm: as ASTM A653 converts.</summary>
    private const double GramsForAMicrometre = 7.14;

    // 28.349523125 g on 0.3048 m by 0.3048 m: the definitions of ounce and foot.
    private const double GramsForAnOunce = 28.349523125 / (0.3048 * 0.3048);

    /// <summary>Of sheet that has none, or of which nobody has said how much.</summary>
    public static ZincCoating None => default;

    /// <summary>What any one spot has at least, in g/m² on both faces together; 0 where nobody has said.</summary>
    public double LeastAtOneSpot { get; init; }

    /// <summary>How thick the zinc is on a face, in µm, where it lies evenly on both.</summary>
    public double MicrometresOnAFace => BothFaces / 2 / GramsForAMicrometre;

    /// <summary>A coating that is told in ounces to the square foot, as G90 is.</summary>
    public static ZincCoating InOunces(double bothFaces, double leastOnOneFace, double leastAtOneSpot) =>
        new(bothFaces * GramsForAnOunce, leastOnOneFace * GramsForAnOunce) { LeastAtOneSpot = leastAtOneSpot * GramsForAnOunce };
}
