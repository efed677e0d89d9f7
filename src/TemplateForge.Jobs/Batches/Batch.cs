using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>Many jobs from one profile, a row of a table each, all of them found to be sound before the first is made.</summary>
/// <remarks>
/// <code>
/// 1. Read:   the tables and the profile, once.
/// 2. Check:  every row becomes exact shapes, which are forgotten again; all that is wrong is told at once.
/// 3. Make:   row by row on all cores, each drawn, saved whole in its own folder, and forgotten: as many rows take no more memory.
/// </code>
/// </remarks>
public sealed class Batch
{
    private readonly ShopTables shop;

    private Batch(ShopTables shop, Profile profile, ImmutableArray<BatchRow> rows) => (this.shop, Profile, Rows) = (shop, profile, rows);

    public Profile Profile { get; }

    /// <summary>At least one, in the order of the table.</summary>
    public ImmutableArray<BatchRow> Rows { get; }

    /// <summary>The headings that a table for a profile may have, in the order in which its values are asked for.</summary>
    public static ImmutableArray<string> HeadingsFor(Profile profile) =>
        [BatchRows.Job, .. profile.Hand == Fabrication.Hand.Either ? [] : (ReadOnlySpan<string>)[BatchRows.Hand], .. profile.Parameters.Where(p => p.InsteadOf.Length == 0).Select(p => p.Name)];

    /// <summary>Reads the table and puts every row's values into the profile.</summary>
    /// <param name="values">The table.</param>
    /// <param name="shared">What all jobs have in common, the profile and the shop's tables among it.</param>
    /// <param name="checkedRows">Told the number of rows that are done, in no order.</param>
    /// <param name="complaints">Where complaints go, all of them at once, those about the table in the order of its lines.</param>
    /// <param name="cancellation">Stops the work between two rows.</param>
    /// <param name="batch">The jobs.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static bool TryRead(
        TextFile values,
        JobRequest shared,
        Action checkedRows,
        ICollection<Complaint> complaints,
        CancellationToken cancellation,
        [MaybeNullWhen(false)] out Batch batch)
    {
        batch = null;
        var before = complaints.Count;
        var told = new List<Complaint>();
        CsvTable.TryRead(values, told, out var table);
        if (ShopReader.TryRead(shared.ShopFiles, complaints, out var shop) && Profile.TryRead(shared.Profile, shop, complaints, out var profile) && table is not null)
        {
            var rows = BatchRows.Of(table, shared, profile, told);
            told.AddRange(FoundIn(rows, shop, profile, values.Name, checkedRows, cancellation));
            if (complaints.Count == before && told.Count == 0) batch = new(shop, profile, rows);
        }
        // By the lines of the table; what stands elsewhere comes first.
        foreach (var complaint in told.Distinct().OrderBy(c => c.File == values.Name ? c.Line : 0)) complaints.Add(complaint);
        return batch is not null;
    }

    // What is wrong with every row alike, as a paper that nobody has, is told once and not of the rows.
    private static IEnumerable<Complaint> FoundIn(
        ImmutableArray<BatchRow> rows, ShopTables shop, Profile profile, string table, Action checkedRows, CancellationToken cancellation)
    {
        var found = new ImmutableArray<Complaint>[rows.Length];
        Parallel.For(0, rows.Length, OnAllCores(cancellation), i =>
        {
            var own = new List<Complaint>();
            JobPlan.TryMake(rows[i].Request, shop, profile, own, out _);
            found[i] = [.. own];
            checkedRows();
        });
        var shared = found.Take(1).SelectMany(f => f)
            .Where(c => c.File != table && (rows.Length > 1 || c.File != profile.Source.Name) && found.All(f => f.Contains(c))).ToHashSet();
        return shared.Concat(rows.SelectMany((row, i) => found[i].Where(c => !shared.Contains(c)).Select(c => c.File == table ? c : Wordings.InRow(row, c))));
    }

    /// <summary>Makes every job and saves each in a folder of its own; one that cannot be saved leaves its place as it was, and the others are made.</summary>
    /// <param name="folder">The folder that the jobs' folders lie in.</param>
    /// <param name="replace">Whether other jobs in their places may go.</param>
    /// <param name="place">Where somebody said which folder; complaints point there.</param>
    /// <param name="made">Told of each job that is saved, in no order.</param>
    /// <param name="complaints">Where the reasons go for those that are not, in the order of the rows.</param>
    /// <param name="cancellation">Stops the work; what is saved by then stays.</param>
    /// <returns>What became of the rows, in their order.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public ImmutableArray<BatchOutcome> Make(
        string folder, bool replace, Place place, Action made, ICollection<Complaint> complaints, CancellationToken cancellation)
    {
        var found = new ImmutableArray<Complaint>[Rows.Length];
        var outcomes = new BatchOutcome[Rows.Length];
        Parallel.For(0, Rows.Length, OnAllCores(cancellation), i =>
        {
            var own = new List<Complaint>();
            outcomes[i] = Made(Rows[i], System.IO.Path.Combine(folder, Rows[i].Name), replace, place, own, cancellation);
            found[i] = [.. own.Select(c => Wordings.InRow(Rows[i], c))];
            if (outcomes[i].IsSaved) made();
        });
        foreach (var complaint in found.SelectMany(c => c)) complaints.Add(complaint);
        return [.. outcomes];
    }

    private BatchOutcome Made(BatchRow row, string folder, bool replace, Place place, List<Complaint> complaints, CancellationToken cancellation)
    {
        if (!JobPlan.TryMake(row.Request, shop, Profile, complaints, out var plan)) return BatchOutcome.Failed(row);
        var set = plan.Drawn(onAllCores: false, cancellation);
        return JobFolder.TrySave(folder, set.Files, replace, place, complaints, cancellation) ? BatchOutcome.Of(row, set) : BatchOutcome.Failed(row);
    }

    private static ParallelOptions OnAllCores(CancellationToken cancellation) =>
        new() { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount };
}
