using Apache.Arrow;
using Apache.Arrow.Ipc;
using Staging.Core.Arrow;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Studies;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Studies.Learning;
using UnitsNet;

namespace Staging.Core.Tests.Arrow;

/// <summary>Columns go through an Arrow file with their bits, units and gaps.</summary>
public class ArrowTests
{
    private static readonly Measure<double> Square = new("square", "m2", v => v * v), Root = new("root", "m", v => v < 0 ? null : Math.Sqrt(v));

    [Fact]
    public void A_gap_run_keeps_every_channel_with_its_unit()
    {
        GapColumns columns = Bench.Gap.Solve().Sample(Duration.FromMicroseconds(100));
        RecordBatch read = Reread(columns.ToArrow());
        Assert.Equal(["Time", .. Enum.GetNames<GapChannel>()], read.Schema.FieldsList.Select(f => f.Name));
        Assert.Equal(columns.Time_s.ToArray(), Numbers(read, "Time"));
        Assert.All(Enum.GetValues<GapChannel>(), c =>
        {
            Assert.Equal(columns[c].ToArray(), Numbers(read, c.ToString()));
            Assert.Equal(GapColumns.UnitOf(c), Unit(read, c.ToString()));
        });
    }

    [Fact]
    public void A_flight_keeps_every_channel_with_its_unit()
    {
        FlightColumns columns = TestFlights.TwoStages().Fly().Bodies[0].Sample(Duration.FromMilliseconds(50));
        RecordBatch read = Reread(columns.ToArrow());
        Assert.Equal(columns.Time_s.ToArray(), Numbers(read, "Time"));
        Assert.All(Enum.GetValues<FlightChannel>(), c =>
        {
            Assert.Equal(columns[c].ToArray(), Numbers(read, c.ToString()));
            Assert.Equal(FlightColumns.UnitOf(c), Unit(read, c.ToString()));
        });
    }

    [Fact]
    public void The_cases_of_a_study_keep_outcomes_and_what_is_absent()
    {
        ReliabilityRun run = new ReliabilityStudy<double, double>
        {
            Inputs = new InputSet<double>(0, new StudyInput<double>("length", "m", Distribution.Uniform(-1, 1), (_, v) => v)),
            Model = (v, _) => v,
            Outcome = v => v < 0 ? "below, \"zero\"" : "above",
            Measures = [Square, Root],
            Cases = 500,
            KeepCases = true,
        }.Run();
        CaseColumns columns = run.Columns();
        RecordBatch read = Reread(columns.ToArrow());
        Assert.Equal(columns.Index.ToArray(), ((Int64Array)read.Column("case")).Values.ToArray());
        Assert.Equal(columns.Outcome, Enumerable.Range(0, 500).Select(i => ((StringArray)read.Column("outcome")).GetString(i)));
        var roots = (DoubleArray)read.Column("root");
        Assert.Equal(Enumerable.Range(0, 500).Select(i => columns.Measures[1].At(i)), Enumerable.Range(0, 500).Select(i => roots.GetValue(i)));
        Assert.InRange(roots.NullCount, 200, 300);
        Assert.Equal(("m", "m2"), (Unit(read, "root"), Unit(read, "square")));
        Assert.False(read.Schema.GetFieldByName("square").IsNullable);
    }

    [Fact]
    public void Sweeps_keep_their_axes_the_first_changing_fastest()
    {
        Axis x = Axis.Even("x", "m", 0, 2, 3), y = Axis.Even("y", "s", 5, 6, 2);
        RecordBatch line = Reread(Sweep.Along(x, (v, _) => v - 1).ToArrow(Square, Root));
        Assert.Equal([0, 1, 2], Numbers(line, "x"));
        Assert.Equal([1, 0, 1], Numbers(line, "square"));
        Assert.Null(((DoubleArray)line.Column("root")).GetValue(0));
        RecordBatch map = Reread(Sweep.Over(x, y, (a, b, _) => a * b).ToArrow(Root));
        Assert.Equal([0, 1, 2, 0, 1, 2], Numbers(map, "x"));
        Assert.Equal([5, 5, 5, 6, 6, 6], Numbers(map, "y"));
        Assert.Equal("s", Unit(map, "y"));
        Assert.Equal(Math.Sqrt(12), Numbers(map, "root")[5]);
    }

    [Fact]
    public void What_was_learned_keeps_cases_and_weights()
    {
        Posterior<Coin> learned = Coin.Tossed(128, ("ten", 7, 3)).Learn();
        RecordBatch read = Reread(learned.ToArrow());
        Assert.Equal(["first", "second", "weight"], read.Schema.FieldsList.Select(f => f.Name));
        Assert.Equal(learned.Values("second").ToArray(), Numbers(read, "second"));
        Assert.Equal(learned.Weights.ToArray(), Numbers(read, "weight"));
    }

    [Fact]
    public void Two_columns_of_one_name_and_a_folder_that_is_not_there_are_refused()
    {
        SweepLine<double> line = Sweep.Along(Axis.Even("square", "m", 0, 2, 3), (v, _) => v);
        Assert.Contains("\"square\"", Assert.Throws<ArgumentException>(() => line.ToArrow(Square)).Message, StringComparison.Ordinal);
        Assert.Throws<DirectoryNotFoundException>(() => line.ToArrow(Root).WriteArrow(Path.Combine(Path.GetTempPath(), "not-there", "x.arrow")));
    }

    [Fact]
    public void Three_lines_write_three_files()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        GapRun run = Bench.Gap.Solve();
        ReliabilityRun study = new ReliabilityStudy<double, double>
        {
            Inputs = new InputSet<double>(0, new StudyInput<double>("length", "m", Distribution.Uniform(-1, 1), (_, v) => v)),
            Model = (v, _) => v,
            Outcome = _ => "any",
            Cases = 5,
            KeepCases = true,
        }.Run();
        Posterior<Coin> posterior = Coin.Tossed(16, ("ten", 7, 3)).Learn();
        #region columns-to-arrow
        run.Sample(Duration.FromMicroseconds(100)).ToArrow().WriteArrow(Path.Combine(folder, "gap.arrow"));
        study.Columns().ToArrow().WriteArrow(Path.Combine(folder, "cases.arrow"));
        posterior.ToArrow().WriteArrow(Path.Combine(folder, "learned.arrow"));
        #endregion
        Assert.Equal(3, Directory.GetFiles(folder).Length);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>Through a file, and the same bytes through a stream.</summary>
    private static RecordBatch Reread(RecordBatch batch)
    {
        string path = Path.GetTempFileName();
        try
        {
            batch.WriteArrow(path);
            using var stream = new MemoryStream();
            batch.WriteArrow(stream);
            Assert.Equal(File.ReadAllBytes(path), stream.ToArray());
            stream.Position = 0;
            using var reader = new ArrowFileReader(stream, leaveOpen: true);
            RecordBatch read = reader.ReadNextRecordBatch();
            Assert.Null(reader.ReadNextRecordBatch());
            return read;
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static double[] Numbers(RecordBatch batch, string column) => ((DoubleArray)batch.Column(column)).Values.ToArray();

    private static string Unit(RecordBatch batch, string column) => batch.Schema.GetFieldByName(column).Metadata["unit"];
}
