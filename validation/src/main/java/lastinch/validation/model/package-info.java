/**
 * Makes the demo models under {@code cases/demo/models}; every size in them is invented.
 *
 * <p>{@code DemoModels} writes them: the tail feather without its boss, a ginkgo leaf for a wall
 * hook, a trivet with thin spokes that meet. {@code Surface} is a closed surface that grows from
 * patches, in millimetres, and writes itself as binary STL.
 *
 * <p>Run {@code DemoModels} by hand after a change; {@code DemoModelsLimitsTest} holds the files
 * against what it writes and says what pouring them comes to. Shapes stay as they are: answers all
 * over the tests and documents are of them.
 */
package lastinch.validation.model;
