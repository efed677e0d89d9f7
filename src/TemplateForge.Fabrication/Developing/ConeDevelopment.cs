using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>An oblique cone laid flat by integration along its base.</summary>
/// <remarks>
/// With P(φ) on the base, G(φ) from there to the top, L = |G|, g = G / L, the outward normal n and t = g × n that runs round:
/// <code>
///     A' = −G' · t / L                                the generator turns in the plane by this much for each φ
///     Q' = (P' · g) g* + (P' · t + δ n' · t) t*       its foot moves so; g* stands at the angle A, t* to the right of it
/// </code>
/// n' has no part along g, because a plane touches a cone along the whole of a generator. So what lies aside by δ, square to the surface, has the same A,
/// and this is exact for it too. Differential geometry of developable surfaces, any textbook.
/// </remarks>
internal sealed class ConeDevelopment : IConeDevelopment
{
    private const int Cells = 1350;

    // Gauss and Legendre, five points on −1 to 1.
    private static readonly ImmutableArray<(double At, double Weight)> Gauss =
    [
        (0, 128.0 / 225),
        (0.5384693101056831, 0.47862867049936647), (-0.5384693101056831, 0.47862867049936647),
        (0.906179845938664, 0.23692688505618908), (-0.906179845938664, 0.23692688505618908),
    ];

    private readonly double _base, _top, _height, _aside, _neutral, _from;
    private readonly double[] _turned = new double[Cells + 1];
    private readonly double[] _turnRate = new double[Cells + 1];
    private readonly Curve _feet = new(), _heads = new();

    public ConeDevelopment(ConeWrap cone)
    {
        (_base, _top, _height, _aside, _neutral) = (cone.BaseDiameter / 2, cone.TopDiameter / 2, cone.Height, cone.Aside, cone.NeutralAside);
        _from = cone.Seam.Radians;
        for (var i = 0; i <= Cells; i++)
        {
            if (i > 0) _turned[i] = _turned[i - 1] + Over(Node(i - 1), Node(i), TurnRate);
            _turnRate[i] = TurnRate(Node(i));
        }
        // The generator across from the seam stands upright.
        var upright = TurnAt(_from + Math.PI);
        for (var i = 0; i <= Cells; i++) _turned[i] -= upright;
        var foot = Vector.Zero;
        for (var i = 0; i <= Cells; i++)
        {
            if (i > 0) foot += new Vector(Over(Node(i - 1), Node(i), phi => FootMotion(phi).X), Over(Node(i - 1), Node(i), phi => FootMotion(phi).Y));
            var frame = Frame.Of(this, Node(i));
            var up = Up(_turned[i]);
            _feet.Set(i, foot, FootMotion(Node(i)));
            _heads.Set(i, foot + up * frame.Length, Motion(up, frame, frame.BaseMotion * (_top / _base)));
        }
        var origin = _feet.At(Place(_from + Math.PI));
        _feet.Shift(-origin);
        _heads.Shift(-origin);
        HasTop = Enumerable.Range(0, Cells).All(i => Frame.Of(this, Node(i)) is var frame
            && RoundMotion(frame, frame.BaseMotion) > 0 && RoundMotion(frame, frame.BaseMotion * (_top / _base)) > -Tolerance.Length);
    }

    public bool HasTop { get; }

    public Point Base(double phi) => Point.Origin + _feet.At(Place(phi));

    public Point Top(double phi) => Point.Origin + _heads.At(Place(phi));

    public double GrowthAt(double phi) => RoundMotion(Frame.Of(this, phi), Frame.Of(this, phi).BaseMotion);

    public ImmutableArray<Segment> BaseArcs(double from, double to) => SmoothArcs.Along(Base, from, to).Segments;

    public ImmutableArray<Segment> TopArcs(double from, double to) =>
        Top(from).DistanceTo(Top((from + to) / 2)) < Tolerance.Merge ? [] : SmoothArcs.Along(Top, from, to).Segments;

    // From the seam over a full turn and half of one more, for the lap.
    private const double Range = 3 * Math.PI;

    private double Node(int i) => _from + Range * i / Cells;

    private double Place(double phi) => (phi - _from) / Range * Cells;

    private double TurnRate(double phi)
    {
        var frame = Frame.Of(this, phi);
        return -frame.Along(frame.GeneratorMotion) / frame.Length;
    }

    private double TurnAt(double phi)
    {
        var (cell, t) = Cell(Place(phi));
        return Between(_turned[cell], _turnRate[cell], _turned[cell + 1], _turnRate[cell + 1], t);
    }

    private Vector FootMotion(double phi)
    {
        var frame = Frame.Of(this, phi);
        return Motion(Up(TurnAt(phi)), frame, frame.BaseMotion);
    }

    private Vector Motion(Vector up, Frame frame, Space motion) => up * frame.Up(motion) - up.Left * RoundMotion(frame, motion);

    private double RoundMotion(Frame frame, Space motion) => frame.Along(motion) + _neutral * frame.NormalTurn;

    private static Vector Up(double turned) => new(-Math.Sin(turned), Math.Cos(turned));

    private static (int Cell, double Part) Cell(double place)
    {
        var cell = Math.Clamp((int)place, 0, Cells - 1);
        return (cell, place - cell);
    }

    // The cubic with these values and rates at both ends of a cell: with cells of 0.4° it errs by less than 1e-8 of a radian or mm.
    private static double Between(double a, double rateA, double b, double rateB, double t)
    {
        const double cell = Range / Cells;
        var (s, rest) = (1 - t, b - a);
        return a + rest * t * t * (3 - 2 * t) + cell * t * s * (rateA * s - rateB * t);
    }

    private static double Over(double from, double to, Func<double, double> rate)
    {
        var sum = 0.0;
        foreach (var (at, weight) in Gauss) sum += weight * rate((from + to) / 2 + (to - from) / 2 * at);
        return sum * (to - from) / 2;
    }

    /// <summary>A curve by its places and its motions at the nodes.</summary>
    private sealed class Curve
    {
        private readonly Vector[] _places = new Vector[Cells + 1], _motions = new Vector[Cells + 1];

        public void Set(int node, Vector place, Vector motion) => (_places[node], _motions[node]) = (place, motion);

        public void Shift(Vector by)
        {
            for (var i = 0; i <= Cells; i++) _places[i] += by;
        }

        public Vector At(double place)
        {
            var (cell, t) = Cell(place);
            var (a, b, v, w) = (_places[cell], _places[cell + 1], _motions[cell], _motions[cell + 1]);
            return new(Between(a.X, v.X, b.X, w.X, t), Between(a.Y, v.Y, b.Y, w.Y, t));
        }
    }

    /// <summary>What goes along a generator, in space.</summary>
    private readonly record struct Frame(double Length, Space Generator, Space Round, Space BaseMotion, Space GeneratorMotion, double NormalTurn)
    {
        public static Frame Of(ConeDevelopment cone, double phi)
        {
            var (sin, cos, taper) = (Math.Sin(phi), Math.Cos(phi), cone._base - cone._top);
            var generator = new Space(cone._aside - taper * cos, -taper * sin, cone._height);
            var length = generator.Length;
            // P' × G, over the radius of the base.
            var normal = new Space(cone._height * cos, cone._height * sin, taper - cone._aside * cos);
            var turning = new Space(-cone._height * sin, cone._height * cos, cone._aside * sin);
            var round = (generator * (1 / length)).Cross(normal * (1 / normal.Length));
            return new(
                length, generator * (1 / length), round,
                new(-cone._base * sin, cone._base * cos, 0),
                new(taper * sin, -taper * cos, 0),
                turning.Dot(round) / normal.Length);
        }

        public double Up(Space motion) => motion.Dot(Generator);

        public double Along(Space motion) => motion.Dot(Round);
    }

    private readonly record struct Space(double X, double Y, double Z)
    {
        public double Length => Math.Sqrt(Dot(this));

        public double Dot(Space o) => X * o.X + Y * o.Y + Z * o.Z;

        public Space Cross(Space o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

        public static Space operator *(Space a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);
    }
}
