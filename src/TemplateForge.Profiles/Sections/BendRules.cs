using TemplateForge.Fabrication;

namespace TemplateForge.Profiles;

/// <summary>The rules for bends by the words that profiles call them.</summary>
internal static class BendRules
{
    public const string KFactor = "k_factor";

    public static IEnumerable<string> Words => [KFactor, "din_6935", "airframe", "rule_of_thumb"];

    /// <param name="word">One of <see cref="Words"/>.</param>
    /// <param name="kFactor">Between 0 and 0.5; only <see cref="KFactor"/> looks at it.</param>
    public static BendRule Of(string word, double kFactor) => word switch
    {
        "din_6935" => new Din6935Rule(),
        "airframe" => new AirframeRule(),
        "rule_of_thumb" => new ThumbRule(),
        _ => new KFactorRule(kFactor),
    };
}
