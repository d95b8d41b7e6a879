/** What a plan to build from needs of the light: the watts of the finished cooker. */
package simmerpoint.study.build;
